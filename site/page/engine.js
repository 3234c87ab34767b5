// The engine: WebAssembly whose bytes travel as text, so that nothing has to be loaded by name.
// The builder gives `engineBytes` and puts `engineGlue` before this file.

let openedEngine = null;
let openedModules = null;

// The engine's exports. Compiled once, and at once, so that every question gets its answer where it is asked.
function openEngine() {
  if (openedEngine === null) {
    const [first, later] = engineModules();
    const engine = engineGlue();
    const exports = engine.initSync({ module: first });
    // The later module takes its memory and its table from the first one, and puts its functions into that table.
    if (later !== null) new WebAssembly.Instance(later, { first: exports });
    openedEngine = engine;
  }
  return openedEngine;
}

// After a panic the engine's memory is not to be trusted; the next openEngine() begins with a fresh one.
function dropEngine() {
  openedEngine = null;
}

// A worker with an engine of its own, the whole of it. `work` is a function that takes the engine and sets
// `self.onmessage`; it is sent as text, so it may use nothing from outside itself.
function engineWorker(work) {
  if (!laterPart.isHere) throw new LaterWanted();
  const source =
    "const engineGlue=" + engineGlue + ";\n" +
    "self.onmessage=(event)=>{self.onmessage=null;const engine=engineGlue();const[module,later]=event.data;" +
    "const first=engine.initSync({module});if(later!==null)new WebAssembly.Instance(later,{first});(" + work + ")(engine)};\n";
  const address = URL.createObjectURL(new Blob([source], { type: "text/javascript" }));
  const worker = new Worker(address);
  URL.revokeObjectURL(address);
  worker.postMessage(engineModules());
  return worker;
}

function engineModules() {
  if (openedModules === null) {
    const later = laterPart.engine ? new WebAssembly.Module(laterPart.engine) : null;
    openedModules = [new WebAssembly.Module(engineBytes), later];
  }
  return openedModules;
}
