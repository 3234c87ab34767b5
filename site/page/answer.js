// The answer: bolted, before bolting, what is not covered, each a sentence whose live numbers can be turned.

const SPEAK_DELAY_MS = 600;

class Answer {
  // `project` gives the project as it is now; `only` names the topics that are told, all where it is null.
  constructor(project, { only = null, live = true } = {}) {
    this.project = project;
    this.only = only;
    this.lives = new Map();
    this.live = live;
    this.spoken = make("p", { class: "unseen", "aria-live": "polite", role: "status" });
    this.body = make("div", { class: "answer-body" });
    this.told = make("div", { class: "answer", role: "group", "aria-label": "The answer", tabindex: -1 }, this.body);
    // What is spoken stands beside the answer, which is read as it is.
    this.element = make("div", {}, this.told, this.spoken);
    this.speakLater = whenQuiet(SPEAK_DELAY_MS, () => this.speak());
    this.first = true;
  }

  update(assessment, faultsList) {
    const { report } = assessment;
    this.told.setAttribute("data-answer", report ? report.verdict : assessment.isWaiting ? "waiting" : assessment.broken ? "broken" : "faults");
    if (report === null) {
      this.lives.clear();
      this.words = assessment.isWaiting ? "The rest of the engine is wanted for the answer." : "There is no answer yet: the input has faults.";
      keepingFocus(this.body, () => fill(this.body, faultsList));
    } else {
      // That something is not known is told wherever there is an answer: the rest of it stands for one way only.
      const sentences = report.answer.filter((sentence) => this.only === null || sentence.topic === "unknown" || this.only.includes(sentence.topic));
      this.words = answerText(sentences);
      this.tell(paragraphsOf(sentences));
    }
    // What a reader hears on opening the page is the page itself; only changes are spoken.
    if (!this.first) this.speakLater();
    this.first = false;
  }

  speak() {
    if (this.spoken.textContent !== this.words) this.spoken.textContent = this.words;
  }

  // Text is made anew; a live number that is in use stays the same element in its place, so that it keeps focus and drag.
  tell(paragraphs) {
    const old = [...this.body.children];
    if (old.length !== paragraphs.length || old.some((paragraph, place) => paragraph.dataset.topic !== paragraphs[place].topic)) {
      const focus = this.focusedLive();
      fill(this.body, paragraphs.map(({ topic }) => make("p", { "data-topic": topic })));
      this.write(paragraphs);
      if (focus) focus.element.focus({ preventScroll: true });
    } else {
      this.write(paragraphs);
    }
  }

  focusedLive() {
    const active = this.element.getRootNode().activeElement;
    return [...this.lives.values()].find((live) => live.element === active);
  }

  write(paragraphs) {
    const used = new Set();
    paragraphs.forEach(({ pieces }, place) => {
      const paragraph = this.body.children[place];
      const nodes = pieces.filter((piece) => piece !== "").map((piece) => this.node(piece, used));
      const kept = nodes.filter((node) => node.parentNode === paragraph && node.classList && node.classList.contains("live"));
      for (const child of [...paragraph.childNodes]) if (!kept.includes(child)) child.remove();
      let next = paragraph.firstChild;
      for (const node of nodes) {
        if (node === next) next = next.nextSibling;
        else paragraph.insertBefore(node, next);
      }
    });
  }

  node(piece, used) {
    if (typeof piece === "string") return document.createTextNode(piece);
    if (piece && piece.live && this.live && !used.has(piece.live)) {
      used.add(piece.live);
      return this.liveNumber(piece).element;
    }
    return make("span", { class: "slot", "data-at": piece && piece.at ? piece.at : null }, slotText(piece));
  }

  liveNumber(slot) {
    if (!this.lives.has(slot.live)) {
      this.lives.set(slot.live, new LiveNumber(slot.live, this.project, {
        turn: (tree, word) => this.project().become(tree, word),
        ended: () => this.speak(),
      }));
    }
    const live = this.lives.get(slot.live);
    live.update(slot);
    return live;
  }
}

// Sentences of one topic in a row make one paragraph, a run of texts and slots.
function paragraphsOf(sentences) {
  const paragraphs = [];
  sentences.forEach((sentence, place) => {
    const pieces = sentenceParts(sentence);
    const next = sentences[place + 1];
    const last = pieces.length - 1;
    // The answer's one sentence may be told in part: then it ends where it stops, and begins with a capital.
    if (typeof pieces[last] === "string" && !(next && CLAUSES.includes(next.topic))) pieces[last] = pieces[last].replace(/;$/, ".");
    if (typeof pieces[0] === "string" && (place === 0 || sentences[place - 1].topic === "unknown")) pieces[0] = sentenceCase(pieces[0]);
    const before = paragraphs[paragraphs.length - 1];
    if (before && before.topic === sentence.topic) before.pieces.push(" ", ...pieces);
    else paragraphs.push({ topic: sentence.topic, pieces });
  });
  return paragraphs;
}

const CLAUSES = ["free", "uncovered"];

function paragraphText({ pieces }) {
  return pieces.map(slotText).join("");
}

function answerText(sentences) {
  return paragraphsOf(sentences).map(paragraphText).join(" ");
}
