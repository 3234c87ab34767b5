// Several engines at once: a pool of workers that take portions of a long job as they become idle.

// A machine may say that it has more cores than a page should take, or none at all.
const POOL_MOST = 8;
// Workers with nothing to do are sent away after this long; the next job opens new ones.
const POOL_IDLE_MS = 20000;

function poolSize() {
  return Math.min(Math.max(navigator.hardwareConcurrency || 1, 1), POOL_MOST);
}

// `work` is a function that takes the engine and gives the function that answers one portion. It is sent to the workers
// as text, so it may use nothing from outside itself.
class EnginePool {
  constructor(work, size = poolSize()) {
    this.work = work;
    this.size = size;
    this.seats = [];
    this.here = null;
    this.run = null;
    this.leaveLater = whenQuiet(POOL_IDLE_MS, () => this.run === null && this.close());
  }

  // Gives the portions, any iterable, to the workers in their order; what was under way is stopped. The listener is told
  //   took(answer, portion, place)      of each portion as it comes, in any order
  //   failed(error, portion, place)     of one that could not be worked out; the others go on
  //   progress(done, given)             after each; `given` counts the portions handed out so far
  //   ended(stopped)                    once, last; `stopped` says that stop() was called or another job was begun
  start(portions, listener) {
    this.stop();
    this.run = { portions: portions[Symbol.iterator](), listener, given: 0, done: 0, isDry: false };
    this.feed(this.run);
  }

  // Whatever a worker is in the midst of is thrown away with the worker.
  stop() {
    const { run } = this;
    if (run === null) return;
    this.run = null;
    for (const seat of this.seats) if (seat.portion !== null) seat.worker.terminate();
    this.seats = this.seats.filter((seat) => seat.portion === null);
    this.leaveLater();
    if (run.listener.ended) run.listener.ended(true);
  }

  // For good, when what asked leaves the page. A pool that is closed opens again when it is asked again.
  close() {
    this.stop();
    for (const seat of this.seats) seat.worker.terminate();
    this.seats = [];
  }

  feed(run) {
    while (this.run === run && !run.isDry) {
      const seat = this.idleSeat();
      if (seat === null) return;
      const next = run.portions.next();
      if (next.done) run.isDry = true;
      else {
        seat.place = run.given;
        seat.portion = { value: next.value };
        run.given += 1;
        seat.worker.postMessage(next.value);
      }
    }
    if (this.run !== run || run.done < run.given) return;
    this.run = null;
    this.leaveLater();
    if (run.listener.ended) run.listener.ended(false);
  }

  idleSeat() {
    const idle = this.seats.find((seat) => seat.portion === null);
    if (idle || this.seats.length >= (this.here ? 1 : this.size)) return idle || null;
    const seat = { worker: null, portion: null, place: 0 };
    seat.worker = this.open(seat);
    this.seats.push(seat);
    return seat;
  }

  open(seat) {
    if (this.here === null) {
      try {
        const worker = engineWorker("(engine)=>{const work=(" + this.work + ")(engine);" +
          "self.onmessage=({data})=>{let said;try{said={answer:work(data)}}catch(error){said={error:String(error)}}self.postMessage(said)}}");
        worker.onmessage = ({ data }) => this.hear(seat, data);
        worker.onerror = (event) => {
          event.preventDefault();
          this.hear(seat, { error: event.message || "the worker could not be started", isLost: !seat.hasAnswered });
        };
        return worker;
      } catch {
        this.here = true;
      }
    }
    return this.own(seat);
  }

  // Where a page may have no workers, portions are worked out here, between two breaths.
  own(seat) {
    let timer = 0;
    return {
      postMessage: (portion) => {
        timer = setTimeout(() => {
          let said = null;
          try {
            said = { answer: engineSays((engine) => this.work(engine)(portion)) };
          } catch (error) {
            said = { error: String(error) };
          }
          this.hear(seat, said);
        });
      },
      terminate: () => clearTimeout(timer),
    };
  }

  hear(seat, said) {
    const { run } = this;
    if (run === null || seat.portion === null) return;
    const { portion: { value }, place } = seat;
    // A worker that never said anything may not be had on this page at all: its portion is worked out here.
    if (said.isLost) {
      this.here = true;
      seat.worker.terminate();
      seat.worker = this.own(seat);
      seat.worker.postMessage(value);
      return;
    }
    seat.portion = null;
    seat.hasAnswered = true;
    run.done += 1;
    if (said.error === undefined) {
      run.listener.took(said.answer, value, place);
    } else {
      // After a panic an engine is not to be trusted; the next portion gets a fresh one.
      seat.worker.terminate();
      this.seats = this.seats.filter((one) => one !== seat);
      if (run.listener.failed) run.listener.failed(said.error, value, place);
    }
    if (this.run !== run) return;
    if (run.listener.progress) run.listener.progress(run.done, run.given);
    this.feed(run);
  }
}
