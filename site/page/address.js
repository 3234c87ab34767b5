// The project in the page's address: `#1.` and the deflated project as base64url, then, each behind a dot, the units
// if they are US ones and the place on the page. Names of places never begin with a digit.

const ADDRESS_MARK = "1.";
const ADDRESS_BYTES_MAX = 8192;
const FILE_BYTES_MAX = 1_000_000;

function addressParts(hash) {
  const text = hash.replace(/^#/, "");
  if (!text.startsWith(ADDRESS_MARK)) return { data: null, units: null, place: decodedPlace(text) };
  const [data, ...rest] = text.slice(ADDRESS_MARK.length).split(".");
  const units = rest[0] === "us" || rest[0] === "si" ? rest.shift() : null;
  return { data, units, place: decodedPlace(rest.join(".")) };
}

function decodedPlace(text) {
  try {
    return decodeURIComponent(text);
  } catch {
    return "";
  }
}

// Units are told only beside a project: alone they are the reader's own habit.
function addressOf({ data, units, place }) {
  const project = data === null ? "" : ADDRESS_MARK + data + (units === "us" ? ".us" : "");
  const behind = place === "" ? "" : (project === "" ? "" : ".") + place;
  return project + behind === "" ? "" : "#" + project + behind;
}

async function packed(text) {
  const stream = new Blob([text]).stream().pipeThrough(new CompressionStream("deflate-raw"));
  const bytes = new Uint8Array(await new Response(stream).arrayBuffer());
  let binary = "";
  for (const byte of bytes) binary += String.fromCharCode(byte);
  return btoa(binary).replace(/\+/g, "-").replace(/\//g, "_").replace(/=+$/, "");
}

// Garbage throws; so does a small address that would unfold to a giant text.
async function unpacked(data) {
  if (!/^[A-Za-z0-9_-]+$/.test(data)) throw new Error("not base64url");
  const binary = atob(data.replace(/-/g, "+").replace(/_/g, "/"));
  const bytes = Uint8Array.from(binary, (sign) => sign.charCodeAt(0));
  const reader = new Blob([bytes]).stream().pipeThrough(new DecompressionStream("deflate-raw")).getReader();
  const decoder = new TextDecoder("utf-8", { fatal: true });
  let text = "";
  let length = 0;
  for (;;) {
    const { done, value } = await reader.read();
    if (done) return text + decoder.decode();
    length += value.length;
    if (length > FILE_BYTES_MAX) throw new Error("too long");
    text += decoder.decode(value, { stream: true });
  }
}
