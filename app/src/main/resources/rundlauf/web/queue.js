"use strict";
// What was typed and is not yet acknowledged, kept on this device until it is.
(() => {
  const NAME = "rundlauf";
  const STORE = "waiting";

  const opened = () => new Promise((resolve, reject) => {
    const ask = indexedDB.open(NAME, 1);
    ask.onupgradeneeded = () => ask.result.createObjectStore(STORE, { keyPath: "id", autoIncrement: true }).createIndex("sheet", "sheet");
    ask.onsuccess = () => resolve(ask.result);
    ask.onerror = () => reject(ask.error);
    ask.onblocked = () => reject(new Error("blocked"));
  });

  // Done only when the device has written it.
  const within = (db, mode, work) => new Promise((resolve, reject) => {
    const change = db.transaction(STORE, mode, { durability: "strict" });
    const ask = work(change.objectStore(STORE));
    change.oncomplete = () => resolve(ask.result);
    change.onerror = change.onabort = () => reject(change.error);
  });

  const kept = (db) => ({
    durable: true,
    add: (entry) => within(db, "readwrite", (s) => s.add(entry)),
    put: (entry) => within(db, "readwrite", (s) => s.put(entry)),
    remove: (id) => within(db, "readwrite", (s) => s.delete(id)),
    all: (sheet) => within(db, "readonly", (s) => s.index("sheet").getAll(sheet)),
  });

  // Where the browser keeps nothing, the page alone does; the sheet says so.
  const inPage = () => {
    const entries = new Map();
    let last = 0;
    return {
      durable: false,
      add: async (entry) => { entries.set(++last, { ...entry, id: last }); return last; },
      put: async (entry) => { entries.set(entry.id, entry); },
      remove: async (id) => { entries.delete(id); },
      all: async (sheet) => [...entries.values()].filter((e) => e.sheet === sheet),
    };
  };

  // A word that no other reading has; a page on plain HTTP has no crypto.randomUUID.
  const key = () => {
    const bytes = crypto.getRandomValues(new Uint8Array(12));
    return Array.from(bytes, (b) => b.toString(16).padStart(2, "0")).join("");
  };

  window.rundlaufQueue = { open: () => opened().then(kept, inPage), key };
})();
