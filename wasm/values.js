// Plain values from the bytes that the engine returns; wasm/src/bytes.rs writes them and names the tags.
// The builder puts this file behind the binding script, whose functions it replaces by ones that return values.

function steadfootValue(bytes) {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const decoder = new TextDecoder("utf-8", { ignoreBOM: true });
  const keys = [];
  let at = 0;
  function text() {
    const start = at + 4;
    at = start + view.getUint32(at, true);
    return decoder.decode(bytes.subarray(start, at));
  }
  function key(tag) {
    if (tag === 9) return keys[bytes[at++]];
    keys.push(text());
    return keys[keys.length - 1];
  }
  function value(tag) {
    if (tag === 3) {
      at += 8;
      return view.getFloat64(at - 8, true);
    }
    if (tag === 4) return text();
    if (tag === 5) {
      const list = [];
      for (let next = bytes[at++]; next !== 7; next = bytes[at++]) list.push(value(next));
      return list;
    }
    if (tag === 6) {
      const object = {};
      for (let next = bytes[at++]; next !== 7; next = bytes[at++]) {
        const name = key(next);
        object[name] = value(bytes[at++]);
      }
      return object;
    }
    return [null, false, true][tag];
  }
  return value(bytes[at++]);
}

// Every call begins with the memory that the last one had.
for (const name of Object.keys(steadfootWasm)) {
  const call = steadfootWasm[name];
  if (name === "initSync" || name === "begin") continue;
  steadfootWasm[name] = (...given) => {
    steadfootWasm.begin();
    const told = call(...given);
    return told instanceof Uint8Array ? steadfootValue(told) : told;
  };
}
