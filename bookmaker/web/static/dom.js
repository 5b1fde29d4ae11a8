// Elements made from names, attributes and children. Text is always text: nothing is ever read as markup.

const SVG = "http://www.w3.org/2000/svg";

export function el(name, attributes = {}, ...children) {
  return filled(document.createElement(name), attributes, children);
}

export function svg(name, attributes = {}, ...children) {
  return filled(document.createElementNS(SVG, name), attributes, children);
}

function filled(element, attributes, children) {
  for (const [name, value] of Object.entries(attributes)) {
    if (value === null || value === undefined || value === false) continue;
    if (typeof value === "function") element.addEventListener(name, value);
    else element.setAttribute(name, value === true ? "" : String(value));
  }
  element.append(...children.flat(2).filter((child) => child !== null && child !== undefined && child !== ""));
  return element;
}

export function counted(number, noun) {
  return `${number} ${noun}${number === 1 ? "" : "s"}`;
}

export function capital(text) {
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}
