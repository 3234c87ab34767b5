// A schedule of many cabinets on its way through the engine: read in pieces here, assessed by a pool of workers.

// More rows than this are for the command line, which holds none of them.
const HALL_ROWS_MAX = 100_000;
const HALL_PIECE_BYTES = 65_536;
const HALL_RECORDS_AT_ONCE = 400;
const HALL_PORTION_ROWS = 16;

const hallWork = (engine) => {
  let kept = null;
  return ({ hall, head, records }) => {
    if (kept === null || kept.hall !== hall || kept.head !== head) {
      if (kept !== null) kept.rows.free();
      kept = { hall, head, rows: engine.HallRows.begin(hall, head) };
    }
    return records.map(({ number, line, text, mark, place, allowed }) => kept.rows.row(number, line, text, mark, place, allowed));
  };
};

// One schedule in one hall. `entries[n]` is row n + 1: its record, and `told` once something came of it.
class HallJob {
  constructor(hall, changed) {
    this.hall = hall;
    this.changed = changed;
    this.entries = [];
    this.faults = [];
    this.done = 0;
    // "reading", "assessing", "done", "stopped" or "refused".
    this.stage = "reading";
    this.isCut = false;
    this.took = 0;
    this.began = performance.now();
    this.pool = null;
  }

  async run(blob) {
    try {
      await this.read(blob);
    } catch (error) {
      console.error(error);
      this.faults = [{ sentence: "The schedule could not be read: " + error }];
    }
    if (this.stage !== "reading") return;
    if (this.faults.length > 0) this.end("refused");
    else this.assess();
  }

  async read(blob) {
    this.reader = engineSays((engine) => engine.HallReader.begin(this.hall));
    const stream = blob.stream().getReader();
    for (;;) {
      const { done, value } = await stream.read();
      if (done) this.reader.finish();
      for (let at = 0; done ? at === 0 : at < value.length; at += HALL_PIECE_BYTES) {
        if (!done) this.reader.push(value.subarray(at, at + HALL_PIECE_BYTES));
        await this.takeRecords();
        if (this.stage !== "reading" || this.faults.length > 0 || this.isCut) {
          stream.cancel();
          return;
        }
      }
      if (done) return;
    }
  }

  async takeRecords() {
    for (;;) {
      const records = this.reader.records(HALL_RECORDS_AT_ONCE);
      for (const record of records) {
        if (this.entries.length === HALL_ROWS_MAX) {
          this.isCut = true;
          return;
        }
        this.entries.push({ record, told: record.refused });
        if (record.refused) this.done += 1;
      }
      this.faults = this.reader.faults();
      this.changed();
      // Between two pieces the page may do what else it has to.
      await new Promise((resolve) => { setTimeout(resolve); });
      if (records.length < HALL_RECORDS_AT_ONCE || this.faults.length > 0) return;
    }
  }

  *portions(entries, rows) {
    const head = this.reader.head_line();
    for (let at = 0; at < entries.length; at += rows) {
      yield { hall: this.hall, head, records: entries.slice(at, at + rows).map(({ record }) => record) };
    }
  }

  assess() {
    this.stage = "assessing";
    this.pool = new EnginePool(hallWork);
    this.begin(this.entries.filter((entry) => entry.told === null), HALL_PORTION_ROWS);
  }

  begin(entries, rows) {
    const failed = [];
    this.pool.start(this.portions(entries, rows), {
      took: (answers) => {
        for (const told of answers) this.tell(told.row.number, told);
        this.changed();
      },
      failed: (error, { records }) => failed.push({ error, records }),
      ended: (stopped) => {
        if (stopped) return;
        // Where a portion broke down, its rows are tried again one by one; what breaks down alone is told.
        if (failed.length > 0 && rows > 1) {
          this.begin(failed.flatMap(({ records }) => records.map(({ number }) => this.entries[number - 1])), 1);
          return;
        }
        for (const { error, records } of failed) for (const record of records) this.tell(record.number, brokenRow(record, error));
        this.end("done");
      },
    });
  }

  tell(number, told) {
    const entry = this.entries[number - 1];
    if (entry.told === null) this.done += 1;
    entry.told = told;
  }

  stop() {
    if (this.stage === "reading" || this.stage === "assessing") this.end("stopped");
  }

  end(stage) {
    this.stage = stage;
    this.took = performance.now() - this.began;
    if (this.pool !== null) this.pool.close();
    this.changed(true);
  }

  // The project that a row makes, as text; none where the row has a fault of its own.
  projectText({ record: { number, line, text } }) {
    return this.reader.project_text(number, line, text) || null;
  }
}

function brokenRow({ number, line, text }, error) {
  const sentence = "The engine broke down at this row: " + error;
  const row = { number, line, text, place: "", type_name: "", load_out: "", floor: "", storey: "", standing: null, outcome: null, faults: [] };
  return { row, sentences: [sentence], written: ["", ""] };
}

// Outcomes of rows, in the order in which they are told.
const HALL_OUTCOMES = ["does_not_hold", "cannot_be_said", "faults", "holds", "waiting"];
const HALL_WORDS = { ...VERDICT_WORDS, faults: "Has faults", waiting: "Not yet assessed" };

function hallOutcome({ told }) {
  if (told === null) return "waiting";
  return told.row.outcome ? told.row.outcome.verdict : "faults";
}

function hallReason({ row: { outcome } }) {
  return outcome && outcome.reason !== null ? wordsOf(outcome.reason) : "";
}

// Results as CSV: the engine wrote each line but for the words, which only the page has.
function hallCsv(job) {
  const cell = (text) => engineSays((engine) => engine.csv_line([text]));
  const lines = job.entries.filter(({ told }) => told !== null && told.written[0] !== "").map(({ told }, place) =>
    [told.written[0], cell(hallReason(told)), told.written[1], place === 0 ? cell(texts.cautions.join(" ")) : ""].join(","));
  return [job.reader.result_head(), ...lines].join("\r\n") + "\r\n";
}

// Results as lines of JSON: the cautions first, then an object for each row.
function hallJsonLines(job) {
  const lines = job.entries.filter(({ told }) => told !== null).map(({ told }) => {
    const { row, sentences } = told;
    const { outcome, standing } = row;
    return {
      row: row.number, line: row.line, place: row.place, type: row.type_name, load_out: row.load_out, floor: row.floor, storey: row.storey,
      ...(standing && { x_mm: standing.at_mm[0], y_mm: standing.at_mm[1], turn_deg: standing.turn_deg }),
      ...(outcome && { verdict: outcome.verdict, utilisation: outcome.utilisation, governs: outcome.governs, of: outcome.of, mass_kg: outcome.mass_kg, fingerprint: outcome.fingerprint }),
      ...(outcome && outcome.not_covered !== null && { not_covered: outcome.not_covered, reason: hallReason(told) }),
      ...(outcome === null && { faults: sentences, text: row.text }),
    };
  });
  return [{ engine: texts.engine, cautions: texts.cautions }, ...lines].map((line) => JSON.stringify(line)).join("\n") + "\n";
}
