// Acts go to the server as forms; the server says when to look again, and what has changed is laid over what is there,
// so that drafts, focus and open panels stay.
"use strict";

const root = document.documentElement;
const main = document.getElementById("columns");
const problem = document.getElementById("problem");
const phone = matchMedia("(max-width: 48rem)");
const only = root.dataset.only;
const store = sessionStorage;
const everything = new Set(); // columns of which more than the newest messages are shown
let version = root.dataset.version;
let acted = ""; // the column somebody has just acted in

// --- laying what is new over what is there ------------------------------------------------------------------------

// What belongs to whoever looks, not to the server.
const theirs = (element, name) =>
  (name === "open" && element.matches("details")) ||
  (name === "hidden" && element.matches(".column, .news")) ||
  (name === "aria-pressed" && element.matches("[data-shows]")) ||
  (name === "disabled" && element.matches("button"));

function lay(old, fresh) {
  if (old.nodeType === Node.TEXT_NODE) {
    if (old.data !== fresh.data) old.data = fresh.data;
    return;
  }
  if (old.nodeType !== Node.ELEMENT_NODE) return;
  if (fresh.dataset.mark && fresh.dataset.mark === old.dataset.mark) return;
  for (const { name, value } of fresh.attributes) {
    if (old.getAttribute(name) !== value && !theirs(old, name)) old.setAttribute(name, value);
  }
  for (const { name } of [...old.attributes]) {
    if (!fresh.hasAttribute(name) && !theirs(old, name)) old.removeAttribute(name);
  }
  if (old.hasAttribute("data-kept") || old.matches("textarea, [data-shows] .news")) return;
  layChildren(old, fresh);
}

function layChildren(old, fresh) {
  const wanted = new Set([...fresh.children].map((child) => child.id).filter(Boolean));
  for (const child of [...old.children]) if (child.id && !wanted.has(child.id)) child.remove();
  let at = old.firstChild;
  for (const next of [...fresh.childNodes]) {
    const same = next.id
      ? [...old.children].find((child) => child.id === next.id)
      : at && !at.id && at.nodeName === next.nodeName && at;
    if (same) {
      if (same !== at) old.insertBefore(same, at);
      lay(same, next);
      at = same.nextSibling;
    } else {
      old.insertBefore(document.adoptNode(next), at);
    }
  }
  while (at) [at] = [at.nextSibling, at.remove()];
}

async function fetched(address) {
  const answer = await fetch(address);
  if (!answer.ok) return null;
  return new DOMParser().parseFromString(await answer.text(), "text/html").body.firstElementChild;
}

// --- looking again ------------------------------------------------------------------------------------------------

async function lookAtTop() {
  const fresh = await fetched("/top");
  if (!fresh) return;
  lay(document.getElementById("top"), fresh);
  press();
}

async function lookAtColumn(key, many = false) {
  if (only && key !== only) return;
  const fresh = await fetched(`/column/${key}${everything.has(key) ? "?all" : ""}`);
  if (!fresh) return;
  const old = document.getElementById(`column-${key}`);
  if (!old) {
    main.append(fresh);
    const open = columns().filter((column) => !column.hidden && column !== fresh).length;
    fresh.hidden = phone.matches ? open > 0 : many && open >= 4;
    if (!fresh.hidden) show(key, true);
    wake(fresh);
  } else {
    const log = old.querySelector(".log");
    const held = document.activeElement;
    const before = log.lastElementChild?.id;
    lay(old, fresh);
    if (!reading.has(log) || acted === key) toNewest(old);
    if (old.hidden && log.lastElementChild?.id !== before) mark(key, true);
    if (held !== document.body && !held.isConnected) follow(old);
    else if (document.activeElement === document.body && acted === key) follow(old);
  }
  if (acted === key) acted = "";
}

// The button that had the focus is gone: go on with what was answered.
function follow(column) {
  const last = column.querySelector(".log > :last-child .buttons button");
  (last ?? column.querySelector("textarea") ?? column.querySelector(".log")).focus({ preventScroll: true });
}

// The newest stays in view, whatever arrives or changes its size, unless somebody reads further up.
const reading = new WeakSet();

const toNewest = (column) => {
  const log = column.querySelector(".log");
  log.scrollTop = log.scrollHeight;
  reading.delete(log);
};

const resized = new ResizeObserver((seen) => {
  for (const { target } of seen) if (!reading.has(target)) target.scrollTop = target.scrollHeight;
});

main.addEventListener("scroll", ({ target: log }) => {
  if (!log.matches?.(".log")) return;
  if (log.scrollHeight - log.scrollTop - log.clientHeight < 60) reading.delete(log);
  else reading.add(log);
}, { capture: true, passive: true });

main.addEventListener("load", (event) => {
  const log = event.target.closest?.(".log");
  if (log && !reading.has(log)) log.scrollTop = log.scrollHeight;
}, true);

async function lookAtWhatIsKnown() {
  for (const panel of document.querySelectorAll(".knows[open]")) {
    const answer = await fetch(`/knows/${panel.dataset.knows}`);
    if (answer.ok) panel.querySelector(".panel").innerHTML = await answer.text();
  }
}

let looking = Promise.resolve();
function look(changed) {
  looking = looking.then(async () => {
    await lookAtTop();
    for (const key of changed) await lookAtColumn(key, changed.length > 3);
    await lookAtWhatIsKnown();
  }).catch(() => {});
}

let stream = null;
function watch() {
  stream?.close();
  stream = null;
  if (document.hidden) return; // a browser keeps few connections to one place: those in view need them
  stream = new EventSource(`/looks?since=${version}`);
  stream.addEventListener("look", (event) => {
    version = event.lastEventId;
    const { run, changed } = JSON.parse(event.data);
    if (String(run) !== root.dataset.run) location.assign(only ? "/" : location.href);
    else look(changed);
  });
}
document.addEventListener("visibilitychange", watch);

// --- acting -------------------------------------------------------------------------------------------------------

document.addEventListener("submit", async (event) => {
  const form = event.target;
  event.preventDefault();
  const given = new URLSearchParams(new FormData(form));
  if (event.submitter?.name) given.set(event.submitter.name, event.submitter.value);
  given.set("run", root.dataset.run);
  const column = form.closest(".column");
  problem.textContent = "";
  if (form.dataset.busy) return;
  form.dataset.busy = "yes";
  acted = column?.dataset.key ?? "";
  try {
    const answer = await fetch(form.action, { method: "POST", body: given });
    if (!answer.ok) {
      problem.textContent = await answer.text();
      return;
    }
    done(form);
  } catch {
    problem.textContent = "The page does not answer. Is it still running?";
  } finally {
    delete form.dataset.busy;
  }
});

function done(form) {
  if (form.matches(".writes")) {
    const text = form.querySelector("textarea");
    if (!text) return;
    text.value = "";
    as(form, "", "", "");
    remember(text);
    text.focus();
    return;
  }
  const panel = form.closest("details");
  if (!panel || form.closest(".more, .commands") || panel.id === "faults") return;
  form.reset();
  panel.open = false;
  panel.querySelector("summary").focus();
}

// An edit, a reply, or neither.
function as(form, mode, message, at) {
  form.elements.mode.value = mode;
  form.elements.message.value = message;
  const said = form.querySelector(".mode");
  said.hidden = !mode;
  said.querySelector("span").textContent = mode === "edit" ? `Editing what was written at ${at}` : `In reply to ${at}`;
}

document.addEventListener("click", async (event) => {
  const button = event.target.closest("button");
  if (!button) return;
  const column = button.closest(".column");
  if (button.dataset.shows) {
    show(button.dataset.shows, phone.matches || button.getAttribute("aria-pressed") !== "true");
  } else if (button.dataset.mode) {
    const form = column.querySelector(".writes[data-kept]");
    if (!form) return;
    as(form, button.dataset.mode, button.dataset.message, button.dataset.at);
    const text = form.querySelector("textarea");
    if (button.dataset.mode === "edit") text.value = button.closest(".entry").querySelector(".words").textContent;
    text.focus();
  } else if ("cancel" in button.dataset) {
    const form = button.closest("form");
    if (form.elements.mode.value === "edit") form.querySelector("textarea").value = "";
    as(form, "", "", "");
    form.querySelector("textarea").focus();
  } else if (button.dataset.earlier) {
    everything.add(button.dataset.earlier);
    await lookAtColumn(button.dataset.earlier);
    column.querySelector(".log").focus();
  }
});

document.addEventListener("keydown", (event) => {
  if (event.key === "Enter" && !event.shiftKey && !event.isComposing && event.target.matches(".writes textarea")) {
    event.preventDefault();
    event.target.form.requestSubmit();
  }
  if (event.key === "Escape") {
    problem.textContent = "";
    for (const open of document.querySelectorAll("#tools details[open]")) {
      open.open = false;
      open.querySelector("summary").focus();
    }
  }
});

document.addEventListener("toggle", (event) => {
  const panel = event.target;
  if (!panel.open) return;
  if (panel.matches(".knows")) lookAtWhatIsKnown();
  if (panel.matches("#tools details")) {
    for (const other of document.querySelectorAll("#tools details[open]")) if (other !== panel) other.open = false;
  }
}, true);

document.addEventListener("change", async (event) => {
  const input = event.target;
  if (!input.dataset.into) return;
  input.form.elements[input.dataset.into].value = input.files.length ? await input.files[0].text() : "";
});

// --- who is shown, and what is being written ----------------------------------------------------------------------

const columns = () => [...document.querySelectorAll(".column")];
const shown = () => JSON.parse(store.getItem(`shown ${root.dataset.run}`) ?? "null");

function mark(key, news) {
  const flag = document.querySelector(`[data-shows="${key}"] .news`);
  if (flag) flag.hidden = !news;
}

function show(key, whether) {
  for (const column of columns()) {
    if (column.dataset.key === key) column.hidden = !whether;
    else if (phone.matches && whether) column.hidden = true;
    if (!column.hidden) mark(column.dataset.key, false);
  }
  store.setItem(`shown ${root.dataset.run}`, JSON.stringify(columns().filter((one) => !one.hidden).map((one) => one.dataset.key)));
  press();
  const column = document.getElementById(`column-${key}`);
  if (whether && column) toNewest(column);
}

function press() {
  for (const button of document.querySelectorAll("[data-shows]")) {
    const column = document.getElementById(`column-${button.dataset.shows}`);
    button.setAttribute("aria-pressed", String(Boolean(column && !column.hidden)));
  }
}

function remember(text) {
  store.setItem(`draft ${root.dataset.run} ${text.id}`, text.value);
}
document.addEventListener("input", (event) => {
  if (event.target.matches(".writes textarea")) remember(event.target);
});
document.addEventListener("focusin", (event) => {
  if (event.target.id) store.setItem("focus", event.target.id);
});

function wake(column) {
  const text = column.querySelector(".writes textarea");
  if (text && !text.value) text.value = store.getItem(`draft ${root.dataset.run} ${text.id}`) ?? "";
  resized.observe(column.querySelector(".log"));
  toNewest(column);
}

function arrange() {
  const wanted = shown();
  const all = columns();
  let open = all.filter((one) => wanted?.includes(one.dataset.key));
  if (!open.length) open = all.slice(0, Math.min(4, Math.max(1, Math.floor(innerWidth / 336)))); // columns that fit
  if (phone.matches) open = open.slice(0, 1);
  for (const column of all) column.hidden = !only && !open.includes(column);
  press();
  all.forEach(wake);
}
phone.addEventListener("change", arrange);
arrange();
document.getElementById(store.getItem("focus") ?? "")?.focus();
watch();
