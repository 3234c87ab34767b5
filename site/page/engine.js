// The engine: WebAssembly whose bytes travel as text, so that nothing has to be loaded.
// The builder gives `engineBytes` and puts `engineGlue` before this file.

let engineModule = null;
let openedEngine = null;

// The engine's exports. Compiled once; synchronous, because a page opened from disk may load nothing later.
function openEngine() {
  if (openedEngine === null) {
    const engine = engineGlue();
    engine.initSync({ module: compiledEngine() });
    openedEngine = engine;
  }
  return openedEngine;
}

// After a panic the engine's memory is not to be trusted; the next openEngine() begins with a fresh one.
function dropEngine() {
  openedEngine = null;
}

// A worker with an engine of its own. `work` is a function that takes the engine and sets `self.onmessage`; it is
// sent as text, so it may use nothing from outside itself.
function engineWorker(work) {
  const source =
    "const engineGlue=" + engineGlue + ";\n" +
    "self.onmessage=(event)=>{self.onmessage=null;const engine=engineGlue();" +
    "engine.initSync({module:event.data});(" + work + ")(engine)};\n";
  const address = URL.createObjectURL(new Blob([source], { type: "text/javascript" }));
  const worker = new Worker(address);
  URL.revokeObjectURL(address);
  worker.postMessage(compiledEngine());
  return worker;
}

function compiledEngine() {
  if (engineModule === null) engineModule = new WebAssembly.Module(engineBytes);
  return engineModule;
}

// What tests and other sites may use.
globalThis.steadfoot = { openEngine, engineWorker, texts };
