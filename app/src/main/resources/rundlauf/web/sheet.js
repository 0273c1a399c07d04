"use strict";
// The sheet: asks, keeps what is typed on this device until the bench has it, and shows what the bench makes of it.
(async () => {
  const sheet = document.getElementById("sheet");
  const words = JSON.parse(document.getElementById("words").textContent);
  const { base, name } = sheet.dataset;
  const at = (id) => document.getElementById(id);
  const entry = at("entry");
  const queue = await window.rundlaufQueue.open();

  let now = JSON.parse(at("now").textContent);
  let waiting = await queue.all(name);
  let acknowledged = [];
  let reached = true;
  let out = false;
  let trouble = ""; // why the bench cannot keep anything now, in its own words
  let sending = false;
  let refreshing = false;
  let stale = false;
  let again = 0;

  const RETRY_MS = 1500;
  const PATIENCE_MS = 8000;

  const element = (tag, attributes, ...inner) => {
    const e = document.createElement(tag);
    Object.entries(attributes).forEach(([k, v]) => {
      if (v === true) e.setAttribute(k, "");
      else if (v !== false && v !== null && v !== undefined) e.setAttribute(k, v);
    });
    e.append(...inner);
    return e;
  };

  const fill = (pattern, ...values) => pattern.replace(/\{(\d)\}/g, (_, i) => values[Number(i)]);

  // ---- what is asked

  const unsent = () => waiting.filter((w) => !w.refused);

  // Readings that the steps do not know of yet answer those before the one to ask now.
  const answered = () => {
    const fresh = [...acknowledged, ...unsent()];
    const keys = fresh.filter((w) => w.kind === "reading").map((w) => w.body.key).filter((k) => !now.keys.includes(k));
    const struck = fresh.filter((w) => w.kind === "strike" && keys.includes(w.key)).length;
    return keys.length - struck;
  };

  const step = () => now.steps[answered()] || now.more;

  const numberField = (asked, id) => element("div", { class: "field" },
    element("label", { for: id }, asked.label),
    element("input", { id, name: asked.column, type: "text", inputmode: "none", autocomplete: "off", required: asked.needed, enterkeyhint: "next",
      "aria-describedby": "refusal", class: "number" }));

  const textField = (asked, id) => element("div", { class: "field" },
    element("label", { for: id }, asked.label),
    element("input", { id, name: asked.column, type: "text", autocomplete: "off", maxlength: "400", required: asked.needed,
      "aria-describedby": "refusal" }));

  const choiceField = (asked, id) => {
    const options = asked.choices.map((c, i) => element("label", { class: "choice" },
      element("input", { type: "radio", name: asked.column, value: c.value, required: true, id: i ? false : id }),
      element("span", {}, c.label)));
    return element("fieldset", { class: "choices" }, element("legend", {}, asked.label), ...options);
  };

  const FIELDS = { number: numberField, text: textField, choice: choiceField };

  let shown = "";

  const begun = () => [...at("fields").querySelectorAll("input")].some((i) => (i.type === "radio" ? i.checked : i.value !== ""));

  // A row that was begun stays what it is, whatever comes from the bench meanwhile.
  const ask = (afresh) => {
    const next = step();
    const done = now.done + answered();
    const mark = JSON.stringify([next.prompt, next.given, next.asked, done]);
    if (mark === shown || (!afresh && begun())) return;
    shown = mark;
    const elsewhere = !afresh && document.activeElement !== document.body && !entry.contains(document.activeElement);
    at("prompt").textContent = next.prompt;
    at("drawing").innerHTML = next.drawing;
    at("fields").replaceChildren(...next.asked.map((a, i) => FIELDS[a.kind](a, "ask-" + i)));
    at("given").replaceChildren(...next.given.map((g, i) => element("div", { class: "field" },
      element("label", { for: "given-" + i }, g.label),
      element("input", { id: "given-" + i, name: g.column, type: "text", autocomplete: "off", value: g.text, "aria-describedby": "refusal" }))));
    at("given-box").hidden = next.given.length === 0;
    at("keys").hidden = !next.asked.some((a) => a.kind === "number");
    at("count").textContent = done < now.intended ? fill(words.count, done + 1, now.intended) : fill(words.beyond, done);
    if (!elsewhere) focusFirst(); // whoever types a condition types on while another device reads
  };

  const focusFirst = () => {
    const first = at("fields").querySelector("input");
    if (first && !document.querySelector("dialog[open]")) first.focus({ preventScroll: true });
  };

  // ---- what is shown

  const lastRead = () => unsent().filter((w) => w.kind === "reading").pop()?.body.key || now.lastKey;

  const sentence = (clause) => clause.charAt(0).toUpperCase() + clause.slice(1) + ".";

  const banner = () => {
    at("undo").disabled = !lastRead();
    const box = at("banner");
    const count = unsent().length;
    const away = (trouble ? "trouble" : "away") + (queue.durable ? "" : "Unkept");
    const text = reached ? "" : fill(out ? words.out : words[away], count, trouble);
    at("let-in").hidden = reached || !out;
    if (box.textContent !== text) box.textContent = text;
    box.hidden = reached;
    at("waiting").textContent = count === 0 ? "" : fill(words.waiting, count);
    document.documentElement.dataset.waiting = count;
  };

  const said = (body) => (body.cells || []).filter((c) => c.column !== "taken").map((c) => c.column + " " + c.text).join(", ");

  const refused = () => {
    const list = waiting.filter((w) => w.refused);
    at("refused").hidden = list.length === 0;
    at("refused-list").replaceChildren(...list.map((w) => {
      const anew = element("button", { type: "button" }, words.anew);
      const leave = element("button", { type: "button" }, words.leave);
      anew.addEventListener("click", async () => { await forget(w); typeAnew(w); });
      leave.addEventListener("click", () => forget(w));
      return element("li", {}, element("span", {}, said(w.body) + ": " + sentence(w.refused.text) + " " + sentence(w.refused.remedy) + " "), anew, " ", leave);
    }));
  };

  const forget = async (w) => {
    await queue.remove(w.id);
    waiting = waiting.filter((other) => other.id !== w.id);
    refused();
    banner();
    ask();
  };

  const typeAnew = (w) => {
    (w.body.cells || []).forEach((c) => {
      const field = entry.elements[c.column];
      if (field) field.value = c.text;
    });
    focusFirst();
  };

  // How what has a name on the page is found again once the piece it stood in was put anew.
  const named = (e) => {
    if (e.dataset.strike) return `[data-strike="${CSS.escape(e.dataset.strike)}"]`;
    if (e.localName === "a") return `a[href="${CSS.escape(e.getAttribute("href"))}"]`;
    return `#${CSS.escape(e.parentElement.closest("[id]").id)} ${e.localName}`;
  };

  // A piece is put anew when it has changed: a screen reader would say again what has not.
  // What was unfolded stays so, and the focus stays where it was.
  const pieces = {};
  const put = (id, html) => {
    if (pieces[id] === html) return;
    pieces[id] = html;
    const box = at(id);
    const unfolded = [...box.querySelectorAll("details[open]")].map(named);
    const focused = box.contains(document.activeElement) ? named(document.activeElement) : "";
    box.innerHTML = html;
    unfolded.forEach((fold) => document.querySelector(fold)?.setAttribute("open", ""));
    if (focused) document.querySelector(focused)?.focus({ preventScroll: true });
  };

  const show = () => {
    put("so-far", now.soFar);
    put("kept", now.kept);
    put("advice", now.advice);
    // What must be said of the spindle, as any page says it at its top.
    put("standing", now.standing.map((text) => element("p", { class: "banner" }, text).outerHTML).join(""));
    document.dispatchEvent(new CustomEvent("charts", { detail: now.charts }));
    ask();
    banner();
    refused();
  };

  // ---- to and from the bench

  const token = () => document.querySelector("meta[name=rundlauf-token]");

  const call = async (path, options) => {
    const stop = new AbortController();
    const timer = setTimeout(() => stop.abort(), PATIENCE_MS);
    try {
      return await fetch(base + path, { ...options, signal: stop.signal, credentials: "same-origin",
        headers: { Accept: "application/json", "Content-Type": "application/json", "Rundlauf-Token": token().content } });
    } finally {
      clearTimeout(timer);
    }
  };

  // After a new start of the bench the page's token is void; a fresh one is had for the asking,
  // save by a device that is not let in, or no longer.
  const freshToken = async () => {
    const answer = await fetch("/token", { credentials: "same-origin", headers: { Accept: "application/json" } });
    out = answer.status === 403;
    if (!answer.ok) throw new Error(String(answer.status));
    token().content = (await answer.json()).token;
  };

  const send = async (w) => {
    const path = w.kind === "reading" ? "/readings" : "/readings/" + encodeURIComponent(w.key) + "/strike";
    const answer = await call(path, { method: "POST", body: JSON.stringify(w.body) });
    const document = await answer.json();
    if (answer.status >= 500) throw Object.assign(new Error(String(answer.status)), { said: document.error });
    return { ok: answer.ok, status: answer.status, document };
  };

  const isNewer = (document) => document.version >= now.version;

  const take = (document) => {
    if (isNewer(document)) now = document;
    acknowledged = acknowledged.filter((w) => (w.kind === "reading" ? !now.keys.includes(w.body.key) : !now.struck.includes(w.key)));
    show();
  };

  const settle = async (w, answer) => {
    if (answer.ok) {
      await queue.remove(w.id);
      waiting = waiting.filter((other) => other.id !== w.id);
      acknowledged.push(w);
      banner();
      refresh();
      return;
    }
    if (answer.status === 403) {
      await freshToken();
      return;
    }
    const error = answer.document.error;
    if (w.atOnce && w.kind === "reading" && !begun()) {
      await forget(w);
      typeAnew(w);
      complain(error);
    } else {
      w.refused = error;
      await queue.put(w);
      refused();
      ask();
    }
  };

  const complain = (error) => {
    at("refusal").textContent = sentence(error.text) + " " + sentence(error.remedy);
    const field = entry.elements[error.field];
    if (field && field.setAttribute) {
      field.setAttribute("aria-invalid", "true");
      field.focus();
    }
  };

  const deliver = async () => {
    if (sending) return;
    sending = true;
    clearTimeout(again);
    try {
      for (let next = unsent()[0]; next; next = unsent()[0]) await settle(next, await send(next));
      setReached(true);
    } catch (e) {
      notReached(e);
    } finally {
      sending = false;
    }
  };

  const notReached = (e) => {
    trouble = e.said ? e.said.text + "; " + e.said.remedy : "";
    setReached(false);
    clearTimeout(again);
    again = setTimeout(deliver, RETRY_MS);
  };

  const setReached = (is) => {
    waiting.forEach((w) => { if (!is) w.atOnce = false; });
    const back = is && !reached;
    reached = is;
    banner();
    if (back) refresh();
  };

  // One at a time; what changes meanwhile is asked for once more.
  const refresh = async () => {
    stale = true;
    if (refreshing) return;
    refreshing = true;
    try {
      while (stale) {
        stale = false;
        const answer = await call("/sheet/now", { method: "GET" });
        if (answer.ok) take(await answer.json());
      }
    } catch (e) {
      notReached(e);
    } finally {
      refreshing = false;
    }
  };

  const keep = async (kind, body, key) => {
    const w = { sheet: name, kind, body, key };
    w.id = await queue.add(w);
    w.atOnce = true;
    waiting.push(w);
    ask(kind === "reading");
    banner();
    await deliver();
  };

  // ---- what the user does

  entry.addEventListener("submit", (e) => {
    e.preventDefault();
    at("refusal").textContent = "";
    const cells = [...new FormData(entry)].map(([column, text]) => ({ column, text: String(text).trim() })).filter((c) => c.text !== "");
    cells.push({ column: "taken", text: new Date().toISOString() });
    keep("reading", { key: window.rundlaufQueue.key(), cells });
  });

  entry.addEventListener("input", (e) => e.target.removeAttribute("aria-invalid"));

  const PRESSED = {
    back: (text) => text.slice(0, -1),
    sign: (text) => (text.startsWith("-") ? text.slice(1) : "-" + text),
  };

  at("keys").addEventListener("pointerdown", (e) => { if (e.target.closest("[data-key]")) e.preventDefault(); });
  at("keys").addEventListener("click", (e) => {
    const pressed = e.target.closest("[data-key]");
    if (!pressed) return;
    const field = document.activeElement.classList.contains("number") ? document.activeElement : at("fields").querySelector("input.number");
    field.value = PRESSED[pressed.dataset.key] ? PRESSED[pressed.dataset.key](field.value) : field.value + pressed.dataset.key;
    field.dispatchEvent(new Event("input", { bubbles: true }));
  });

  const dialog = at("strike");
  let striking = "";
  const openStrike = (key) => {
    striking = key;
    at("reason").value = "";
    dialog.showModal();
  };
  at("undo").addEventListener("click", () => {
    if (lastRead()) openStrike(lastRead());
  });
  at("kept").addEventListener("click", (e) => {
    const button = e.target.closest("[data-strike]");
    if (button) openStrike(button.dataset.strike);
  });
  dialog.addEventListener("click", (e) => {
    const reason = e.target.closest("[data-reason]");
    if (reason) at("reason").value = reason.dataset.reason;
    if (e.target.closest("[data-close]")) dialog.close();
  });
  at("strike-form").addEventListener("submit", (e) => {
    e.preventDefault();
    const reason = at("reason").value.trim();
    if (!reason) return;
    dialog.close();
    keep("strike", { reason }, striking);
  });
  dialog.addEventListener("close", focusFirst);

  addEventListener("beforeunload", (e) => { if (!reached && unsent().length) e.preventDefault(); });
  addEventListener("online", deliver);
  addEventListener("offline", () => { trouble = ""; setReached(false); });

  const news = new EventSource(base + "/sheet/events");
  news.addEventListener("changed", (e) => { if (Number(e.data) > now.version) refresh(); });
  news.addEventListener("inspected", refresh); // a spindle may be held now
  news.addEventListener("open", () => { if (!reached || unsent().length) deliver(); });

  // A condition that was refused is mended first; a reload leads to the sheet, not to its form again.
  document.querySelector(".conditions [aria-invalid]")?.focus();
  if (!location.pathname.endsWith("/sheet")) history.replaceState(null, "", base + "/sheet");

  show();
  deliver();
})();
