// Studies: questions that are no single check. Asked in a worker, because some of them try the whole check many times.

const STUDY_DELAY_MS = 300;
// Several small pictures stand side by side where there is room.
const STUDY_WIDTHS = { "anchor-modes": 340, "ways-of-standing": 250 };

// One worker for all studies of a page; questions wait in a row, and of the same asker only the last is kept.
const studyDesk = {
  worker: null,
  asked: [],
  busy: null,

  ask(question, answer, asker) {
    this.asked = this.asked.filter((one) => one.asker !== asker);
    this.asked.push({ question, answer, asker });
    this.stop(asker);
    this.next();
  },

  // What is under way for an asker ends with what it has found.
  stop(asker) {
    if (this.busy !== null && this.busy.asker === asker) this.worker.postMessage({ stop: true });
  },

  next() {
    if (this.busy !== null || this.asked.length === 0) return;
    this.busy = this.asked.shift();
    if (this.worker === null) this.worker = this.open();
    this.worker.postMessage(this.busy.question);
  },

  done(said) {
    if (said && said.progress) {
      this.busy.asker.progress(said.progress);
      return;
    }
    const { answer } = this.busy;
    this.busy = null;
    answer(said);
    this.next();
  },

  // Where a page may have no worker, the same question is asked here, between two breaths.
  open() {
    const here = { postMessage: (question) => Array.isArray(question) && setTimeout(() => this.done(studyHere(question))) };
    try {
      const worker = engineWorker((engine) => {
        let words = {};
        let stopped = false;
        const wordsOf = (code) => words[code] || "";
        // A study in portions is left now and then, so that it can be stopped, and say how far it is.
        const goOn = (work, system, width) => {
          const until = Date.now() + 80;
          let more = true;
          while (more && Date.now() < until) more = work.advance();
          if (more && !stopped) {
            self.postMessage({ progress: [...work.progress()] });
            setTimeout(() => goOn(work, system, width));
            return;
          }
          self.postMessage(work.shown(system, width, wordsOf));
          work.free();
        };
        self.onmessage = ({ data }) => {
          if (data.words) {
            words = data.words;
            return;
          }
          if (data.stop) {
            stopped = true;
            return;
          }
          const [text, system, id, extra, width] = data;
          stopped = false;
          try {
            const work = engine.begin_study(text, id, extra);
            if (work) {
              goOn(work, system, width);
              return;
            }
            self.postMessage(engine.study(text, system, id, extra, width, wordsOf));
          } catch (error) {
            self.postMessage({ broken: String(error) });
          }
        };
      });
      worker.postMessage({ words: Object.fromEntries(Object.entries(texts.rows).filter(([, row]) => row.h === "name").map(([code, row]) => [code, row.w])) });
      worker.onmessage = ({ data }) => this.done(data);
      worker.onerror = () => {
        worker.terminate();
        this.worker = here;
        if (this.busy !== null) here.postMessage(this.busy.question);
      };
      return worker;
    } catch {
      return here;
    }
  },
};

function studyHere([text, system, id, extra, width]) {
  try {
    return engineSays((engine) => engine.study(text, system, id, extra, width, wordsOf));
  } catch (error) {
    console.error(error);
    return { broken: String(error) };
  }
}

// One study with its tables and pictures. `extra` is what the reader brought beside the project.
class StudyView {
  constructor(id) {
    this.id = id;
    this.record = RECORD_STUDIES.includes(id) ? new RecordControl(() => this.assessment && this.update(this.assessment)) : null;
    this.figure = id === "rocking" ? new RockingFigure() : null;
    this.choice = CHECK_STUDIES.includes(id) ? new CheckChoice(() => this.update(this.assessment)) : null;
    this.asked = null;
    this.body = make("div", { class: "study-body" });
    this.element = make("div", { class: "study", "data-study": id }, this.record && this.record.element, this.choice && this.choice.element, this.body);
    if (this.record) this.record.takeDrops(this.element);
    this.askLater = whenQuiet(STUDY_DELAY_MS, () => this.ask());
  }

  get extra() {
    if (this.choice !== null) return this.choice.value;
    return this.record === null ? "" : broughtRecord.text;
  }

  update(assessment) {
    this.assessment = assessment;
    if (assessment.report === null || this.element.closest("details:not([open])")) return;
    if (this.choice !== null) this.choice.update(assessment);
    const key = [assessment.text, assessment.system, this.extra].join("\n");
    if (key === this.asked) return;
    this.asked = key;
    this.element.setAttribute("aria-busy", "true");
    if (this.body.childElementCount === 0) fill(this.body, make("p", { class: "note" }, "Being worked out …"));
    this.askLater();
  }

  ask() {
    const { text, system } = this.assessment;
    const width = Math.min(Math.max(Math.floor(this.body.clientWidth) || DRAWING_WIDTH_MIN, DRAWING_WIDTH_MIN), STUDY_WIDTHS[this.id] || 720);
    studyDesk.ask([text, system, this.id, this.extra, width], (said) => this.tell(said), this);
  }

  progress([done, of]) {
    if (!this.body.querySelector("progress")) {
      fill(this.body, make("p", { class: "study-progress" }, make("progress", { max: of, value: done, "aria-label": "How far it is" }),
        make("button", { type: "button", class: "plain", "data-key": "stop " + this.id, click: () => studyDesk.stop(this) }, "Stop here")));
    }
    this.body.querySelector("progress").value = done;
  }

  tell(said) {
    this.element.setAttribute("aria-busy", "false");
    if (said === null || said === undefined || said.broken) {
      fill(this.body, make("p", { class: "note" }, "This could not be worked out."));
      return;
    }
    this.element.dataset.shown = String(Boolean(said.shown));
    const { report, text } = this.assessment;
    const stands = this.id !== "not-known" && said.shown && report && standInNote(report, JSON.parse(text));
    keepingFocus(this.body, () => fill(this.body, stands, said.shown ? this.shown(said.shown) : make("p", { class: "note" }, sentenceCase(wordsOf(said.reason)), ".")));
  }

  shown({ notes, tables, pictures, sections }) {
    return [
      this.figure && this.figure.of(this.assessment.text, this.extra),
      pictures.map((picture) => make("figure", { class: "figure " + picture.view }, make("div", { class: "frame" }, drawingOf(picture)), make("figcaption", {}, picture.title))),
      tables.map((table) => studyTable(table, this.id, notes)),
      notes.map((note) => make("p", { class: "note" }, textWithSymbols(sentenceCase(wordsOf(note))), ".")),
      sections.length > 0 && make("details", { class: "study-working" }, make("summary", { "data-key": "working " + this.id }, "The working"), workingBlock(sections, { open: true })),
    ];
  }
}

// On a phone a row of many columns becomes a block of labelled values; a few narrow ones stay a table.
function studyTable(table, id, notes) {
  const name = sentenceCase(wordsOf(table.name));
  const figures = table.columns.map((_, place) => table.rows.every(({ cells }) => cells[place] === "nothing" || isFigure(cells[place])));
  const wordy = figures.filter((one) => !one).length;
  return make("div", { class: "study-table" },
    make("div", { class: "wide", tabindex: 0, role: "group", "aria-label": name },
      make("table", { class: table.columns.length > (wordy > 1 ? 3 : 4) ? "many" : null },
        make("caption", {}, textWithSymbols(name)),
        make("thead", {}, make("tr", {}, table.columns.map((column, place) => make("th", { scope: "col", class: figures[place] ? "figures" : null }, textWithSymbols(wordsOf(column.name)))))),
        make("tbody", {}, table.rows.map((row) => make("tr", { class: row.is_marked ? "marked" : null },
          row.cells.map((cell, place) => make("td", { class: [figures[place] && "figures", cell === "nothing" && "none"].filter(Boolean).join(" ") || null, "data-label": wordsOf(table.columns[place].name), "data-value": cell.number === undefined ? null : String(cell.number) },
            textWithSymbols(cellText(cell, table.columns[place]))))))))),
    make("button", { type: "button", class: "plain", "data-key": "csv " + table.name, click: () => saveText(id + ".csv", "text/csv", tableCsv(table, notes)) }, "Save this table as CSV"));
}

function isFigure(cell) {
  return cell.number !== undefined || cell.range !== undefined || cell.measured !== undefined;
}

function cellText(cell, column) {
  if (cell === "nothing") return "–";
  const { kind, ends } = cell.measured || { kind: column.kind, ends: cell.range };
  const number = (value, rounding) => shown(value, kind, { rounding });
  if (cell.number !== undefined) return number(cell.number, column.rounding);
  if (ends) return ends[0] === ends[1] ? number(ends[0], column.rounding) : number(ends[0], "down") + " to " + number(ends[1], "up");
  if (cell.name !== undefined) return wordsOf(cell.name);
  if (cell.check !== undefined) return checkTitle(cell.check);
  if (cell.status !== undefined) return STATUS_WORDS[cell.status];
  return cell.text;
}

// Numbers in SI with all their digits; the notes of the study and the cautions come along.
function tableCsv(table, notes) {
  const unit = (column) => engineSays((engine) => engine.unit_text(column.kind, "si", "base"));
  const heads = table.columns.map((column) => wordsOf(column.name) + (unit(column) ? " [" + unit(column) + "]" : ""));
  const lines = table.rows.map((row) => row.cells.map((cell, place) => {
    if (cell === "nothing") return "";
    if (cell.number !== undefined) return String(cell.number);
    if (cell.range !== undefined) return cell.range.join(" to ");
    if (cell.measured !== undefined) {
      const unit = engineSays((engine) => engine.unit_text(cell.measured.kind, "si", "base"));
      return [...new Set(cell.measured.ends)].join(" to ") + (unit ? " " + unit : "");
    }
    return cellText(cell, table.columns[place]);
  }));
  return [heads, ...lines, ...notes.map((note) => [sentenceCase(wordsOf(note)) + "."]), ...texts.cautions.map((caution) => [caution])].map((cells) => cells.map(csvCell).join(",")).join("\r\n") + "\r\n";
}

// A cell that a spreadsheet would take for a formula is written so that it stays a text; a plain number is none.
function csvCell(text) {
  const safe = /^[=+\-@\t\r]/.test(text) && !/^-?[\d.]+(e[-+]?\d+)?$/i.test(text) ? "'" + text : text;
  return /[",\r\n]/.test(safe) ? '"' + safe.replaceAll('"', '""') + '"' : safe;
}

// `project` gives the project that a study may change.
function studyView(id, project) {
  return id === "limit-map" ? new LimitMap(project) : new StudyView(id);
}

// All studies, each closed until somebody asks.
class MoreQuestions {
  constructor(project) {
    this.views = texts.studies.map((one) => ({ ...one, view: studyView(one.id, project) }));
    this.element = make("section", { class: "more-questions", "aria-labelledby": "more-questions-title" },
      make("h2", { id: "more-questions-title" }, "More questions"),
      this.views.map(({ id, title, help, group, view }) => [group && make("h3", {}, group), make("details", { "data-question": id, toggle: () => this.assessment && view.update(this.assessment) },
        make("summary", { "data-key": "question " + id }, make("h4", {}, title)), make("p", { class: "help" }, help), view.element)]));
  }

  // Opens one of the questions and brings the reader to it.
  show(id) {
    const question = this.element.querySelector('[data-question="' + id + '"]');
    question.open = true;
    question.scrollIntoView({ block: "start" });
    question.firstElementChild.focus({ preventScroll: true });
  }

  update(assessment) {
    this.assessment = assessment;
    for (const { view } of this.views) view.update(assessment);
  }

  leave() {
    for (const { view } of this.views) if (view.leave) view.leave();
  }
}

// The studies of a chapter's worksheet, open from the start.
class OpenStudies {
  constructor(ids, project) {
    this.views = ids.map((id) => studyView(id, project));
    this.element = make("div", { class: "open-studies" }, this.views.map((view, place) => {
      const { title, help } = texts.studies.find((one) => one.id === ids[place]) || { title: ids[place], help: "" };
      return make("section", {}, make("h3", {}, title), make("p", { class: "help" }, help), view.element);
    }));
  }

  update(assessment) {
    for (const view of this.views) view.update(assessment);
  }

  leave() {
    for (const view of this.views) if (view.leave) view.leave();
  }
}
