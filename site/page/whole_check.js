// The whole check: the answer, everything that it rests on, and the whole input.

function wholeCheck(worksheet, seat) {
  worksheet.answer = new Answer(() => worksheet.project());
  worksheet.form = new Form(seat);
  worksheet.limits = new Limits();
  worksheet.checkList = new CheckList();
  worksheet.comparison = new Comparison((check, address) => worksheet.checkList.showStep(check, address));
  worksheet.toolbar = new Toolbar({ project: () => worksheet.project(), reset: () => worksheet.reset(), say: (words) => worksheet.say(words) });
  worksheet.paper = new CalculationSheet();
  const questions = new MoreQuestions(() => worksheet.project());
  worksheet.results = make("div", { class: "results" },
    worksheet.with(new StandIn()), worksheet.with(new Drawings()), worksheet.with(worksheet.checkList), worksheet.with(worksheet.limits), worksheet.with(questions), worksheet.with(worksheet.comparison),
    make("section", { class: "what-was-assessed", "aria-label": "What was assessed" }, make("h2", {}, "What was assessed"), worksheet.with(new StatesTable()), worksheet.with(new CasesTable()),
      worksheet.with({ element: (worksheet.absent = make("div")), update: ({ report }) => report && fill(worksheet.absent, absentLines(report)) })));
  return [
    worksheet.answer.element,
    make("p", { class: "next" }, worksheet.whose = make("span", { class: "whose" }),
      make("button", { type: "button", class: "plain", "data-key": "to input", click: () => toInput(worksheet.toolbar.element) }, "Change the input"),
      openButton("plain", "open above"),
      make("button", { type: "button", class: "plain", "data-key": "print", click: () => print() }, "Print the sheet"),
      make("button", { type: "button", class: "plain", "data-key": "copy", click: () => copyAnswer(worksheet) }, "Copy the answer")),
    worksheet.with(new NextSteps({ show: (path) => worksheet.showFault(path), ask: (id) => questions.show(id) })),
    worksheet.with(worksheet.notKnown()), worksheet.results,
    make("div", { class: "inputs" }, worksheet.with(new StandingLine(() => worksheet.toAnswer())), worksheet.toolbar.element, worksheet.form.element),
    worksheet.paper.element,
  ];
}

function toInput(toolbar) {
  toolbar.parentElement.scrollIntoView({ block: "start" });
  toolbar.querySelector("button:enabled").focus({ preventScroll: true });
}

async function copyAnswer(worksheet) {
  const { assessment } = worksheet;
  const done = assessment.report !== null && await copied(answerAsText(assessment, worksheet.project().tree));
  readersCabinet.say({ kind: "copied", lines: [done ? "The answer is copied as text: paste it where it is wanted." : "There is nothing that could be copied."] });
}

// An example that the guide names, a bare cabinet ("new"), or what this browser had last becomes the reader's cabinet.
async function openExample(what, link) {
  if (what === "last") readersCabinet.receive(recalled("localStorage", "last"), "What this browser had");
  else readersCabinet.take(what === "new" ? newTree() : treeOf(texts.demos.find((demo) => demo.file === what).text));
  await readersCabinet.carry();
  location.href = link.href;
}

function printCheck(worksheet) {
  if (worksheet.closest("[hidden]") || !worksheet.isConnected) return;
  worksheet.limits.complete();
  completeOpen(worksheet.assessment);
  worksheet.paper.make(worksheet.assessment, worksheet.project().tree, worksheet.limits.known, worksheet.comparison.onPaper());
}

// What a worksheet begins with where it names no example of its own.
function fullDemo() {
  return texts.demos.find((one) => /full/.test(one.file)) || texts.demos[0];
}
