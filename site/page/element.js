// Elements are made by code and text goes in as text, so nothing that a reader types can become markup.

const SVG_NAMESPACE = "http://www.w3.org/2000/svg";

function make(name, attributes, ...children) {
  return furnished(document.createElement(name), attributes, children);
}

function draw(name, attributes, ...children) {
  return furnished(document.createElementNS(SVG_NAMESPACE, name), attributes, children);
}

// Functions become listeners, `true` an empty attribute; null, undefined and false are left out.
function furnished(element, attributes, children) {
  let value = null;
  for (const [name, given] of Object.entries(attributes || {})) {
    if (given === null || given === undefined || given === false) continue;
    if (typeof given === "function") element.addEventListener(name, given);
    else if (name === "value" && element.localName !== "option") value = given;
    else element.setAttribute(name, given === true ? "" : given);
  }
  element.append(...present(children));
  // A select takes its value only once its options are there.
  if (value !== null) element.value = value;
  return element;
}

function present(children) {
  return children.flat(Infinity).filter((child) => child !== null && child !== undefined && child !== false && child !== "");
}

function fill(element, ...children) {
  element.replaceChildren(...present(children));
  return element;
}

// Runs a change to the tree under `root` and gives the focus back to the element that carries the same key after it.
function keepingFocus(root, change) {
  const focused = root.getRootNode().activeElement;
  const key = focused && root.contains(focused) ? focused.getAttribute("data-key") : null;
  change();
  if (key === null || root.getRootNode().activeElement === focused) return;
  const again = [...root.querySelectorAll("[data-key]")].find((element) => element.getAttribute("data-key") === key);
  if (again) again.focus({ preventScroll: true });
}

let madeIds = 0;

function freshId(word) {
  madeIds += 1;
  return word + "-" + madeIds;
}

// Whoever wants to know of a change.
class Listeners {
  constructor() {
    this.all = new Set();
  }

  add(listener) {
    this.all.add(listener);
    return () => this.all.delete(listener);
  }

  tell(...what) {
    for (const listener of [...this.all]) listener(...what);
  }
}

// Calls `work` once things have been quiet for a while.
function whenQuiet(milliseconds, work) {
  let timer = 0;
  return (...given) => {
    clearTimeout(timer);
    timer = setTimeout(() => work(...given), milliseconds);
  };
}
