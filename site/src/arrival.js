// How the parts of the page come together; the builder puts this behind the code. Engine and later texts travel packed,
// because text that stands for raw code is a third longer and hard to press.

function bytesOf(text) {
  if (Uint8Array.fromBase64) return Uint8Array.fromBase64(text);
  return Uint8Array.from(atob(text), (character) => character.charCodeAt(0));
}

async function unpacked(text) {
  const stream = new Blob([bytesOf(text)]).stream().pipeThrough(new DecompressionStream("deflate-raw"));
  return new Uint8Array(await new Response(stream).arrayBuffer());
}

async function unpackedTexts(text) {
  return JSON.parse(new TextDecoder().decode(await unpacked(text)));
}

// The later part, where its script has run: the rest of the engine, of the text tables and of the code. A part of another
// build, which a browser may have kept, does not fit: its codes and functions could mean something else.
async function laterPart(build) {
  const given = globalThis.steadfootLater;
  if (!given) return null;
  delete globalThis.steadfootLater;
  if (given.build !== build) return null;
  const [engine, texts] = await Promise.all([unpacked(given.engine), unpackedTexts(given.texts)]);
  return { engine, texts, code: given.code };
}

// Fetches the later part's script from beside this one; null where it cannot be had.
function laterFrom(address, build) {
  return new Promise((resolve) => {
    const script = document.createElement("script");
    const settled = () => {
      script.remove();
      resolve(laterPart(build).catch(() => null));
    };
    script.addEventListener("load", settled);
    script.addEventListener("error", settled);
    script.src = address;
    document.head.append(script);
  });
}

function begun(texts, packedEngine, build, scriptAddress) {
  // Once there, the code runs no second time, even when it is included twice.
  globalThis.steadfoot = {};
  const bring = scriptAddress ? () => laterFrom(new URL("later.js", scriptAddress).href, build) : async () => null;
  const parts = Promise.all([texts, unpacked(packedEngine), laterPart(build)]);
  globalThis.steadfoot.started = parts.then(([tables, engine, later]) => {
    if (tables.build !== build) throw new Error("the text tables are of another build");
    page(tables, engine, later, bring);
  });
}
