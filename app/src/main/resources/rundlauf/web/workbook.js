"use strict";
// What every page of the workbook does: changes carry the page's token, pieces that come later bring their charts.
(() => {
  const token = () => document.querySelector("meta[name=rundlauf-token]").content;

  document.addEventListener("htmx:configRequest", (e) => {
    e.detail.headers["Rundlauf-Token"] = token();
  });

  // A piece of a page may hold charts as JSON; they replace those of the page.
  document.addEventListener("htmx:afterSettle", (e) => {
    const data = e.detail.elt.querySelector("script[data-charts]");
    if (data) document.dispatchEvent(new CustomEvent("charts", { detail: JSON.parse(data.textContent) }));
  });
})();
