"use strict";
// What every page of the workbook does: changes carry the page's token, pieces that come later bring their charts.
(() => {
  const token = () => document.querySelector("meta[name=rundlauf-token]").content;

  document.addEventListener("htmx:configRequest", (e) => {
    e.detail.headers["Rundlauf-Token"] = token();
  });

  // The place that the address names may come later too; whoever has moved on is left there.
  let sought = location.hash.slice(1);
  addEventListener("scroll", () => { if (scrollY > 0) sought = ""; });
  document.addEventListener("htmx:afterSettle", () => {
    const there = sought && document.getElementById(sought);
    if (!there) return;
    sought = "";
    dispatchEvent(new Event("hashchange")); // unfolds what it lies in, and goes there
  });

  // Pieces of a page that come later bring their charts: all that are there are drawn together.
  let drawn = 0;
  document.addEventListener("htmx:afterSettle", () => {
    const brought = [...document.querySelectorAll("script[data-charts]")];
    if (brought.length === drawn) return;
    drawn = brought.length;
    const all = [document.getElementById("charts"), ...brought].flatMap((data) => JSON.parse(data.textContent));
    document.dispatchEvent(new CustomEvent("charts", { detail: all }));
  });
})();
