// The puzzles of the page: what lists need is at hand, what an open one needs is unpacked when it is asked for.

const opened = new Map();

export function readIndex() {
  return JSON.parse(document.getElementById("index").textContent);
}

export async function unpack(id) {
  if (!opened.has(id)) opened.set(id, inflate(document.getElementById(id).textContent));
  return opened.get(id);
}

async function inflate(text) {
  const bytes = Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0));
  const stream = new Blob([bytes]).stream().pipeThrough(new DecompressionStream("deflate-raw"));
  return JSON.parse(await new Response(stream).text());
}

export function detail(at) {
  return unpack(`packed-${at}`);
}
