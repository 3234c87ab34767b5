// The work of a map: which points are asked in which order, and what is known of each. Coarse first, then between.

const MAP_STRIDES = [8, 4, 2, 1];
const MAP_STANDING = ["holds", "fails", "not_covered", "not_built"];
// Tables of names that a picture of a map is lettered with.
const MAP_TABLES = [200, 202];

// What a worker does with a portion: points to be assessed, or a picture to be painted.
function mapPortion(engine) {
  return ({ text, x, xs, y, ys, paint }) => paint
    ? engine.map_drawing(text, paint.system, x, xs, y, ys, paint.cells, paint.width, (code) => paint.words[code] || "")
    : engine.map_portion(text, x, xs, y, ys);
}

// One map: a project, two inputs, the values of both axes.
class MapWork {
  constructor({ text, x, xs, y, ys }) {
    Object.assign(this, { text, x, xs, y, ys });
    const count = xs.length * ys.length;
    this.cells = new Float64Array(3 * count).fill(NaN);
    this.isKnown = new Uint8Array(count);
    this.known = 0;
    this.count = count;
    // What is still to come at each stride; the coarsest of them are done first.
    this.left = new Map(MAP_STRIDES.map((stride) => [stride, 0]));
    this.strideOf = new Uint8Array(count);
    for (const stride of [...MAP_STRIDES].reverse()) {
      for (const row of along(ys, stride)) for (const column of along(xs, stride)) this.strideOf[row * xs.length + column] = stride;
    }
    for (const stride of this.strideOf) this.left.set(stride, this.left.get(stride) + 1);
    this.pictures = [];
  }

  // Rows that are not known yet; a picture that is asked for meanwhile comes first.
  *portions() {
    for (const stride of MAP_STRIDES) {
      for (const row of along(this.ys, stride)) {
        while (this.pictures.length > 0) yield this.pictures.shift();
        const columns = along(this.xs, stride).filter((column) => this.strideOf[this.place(column, row)] === stride && !this.isKnown[this.place(column, row)]);
        if (columns.length > 0) yield { ...this.axes(columns, [row]), columns, row };
      }
    }
    yield* this.pictures.splice(0);
  }

  // Takes the numbers of a row; the finest stride that is now complete, where it is another than before.
  take({ columns, row }, numbers) {
    const before = this.complete();
    columns.forEach((column, number) => {
      const place = this.place(column, row);
      this.cells.set(numbers.subarray(3 * number, 3 * number + 3), 3 * place);
      if (this.isKnown[place]) return;
      this.isKnown[place] = 1;
      this.known += 1;
      this.left.set(this.strideOf[place], this.left.get(this.strideOf[place]) - 1);
    });
    const now = this.complete();
    return now === before ? null : now;
  }

  complete() {
    let complete = null;
    for (const stride of MAP_STRIDES) {
      if (this.left.get(stride) > 0) break;
      complete = stride;
    }
    return complete;
  }

  // A portion that paints what is known at a stride.
  picture(stride, system, width) {
    const [columns, rows] = [along(this.xs, stride), along(this.ys, stride)];
    const cells = new Float64Array(3 * columns.length * rows.length);
    let place = 0;
    for (const row of rows) {
      for (const column of columns) {
        cells.set(this.numbers(column, row), place);
        place += 3;
      }
    }
    const words = Object.fromEntries(Object.entries(texts.rows).filter(([code]) => MAP_TABLES.includes(code >> 8)).map(([code, row]) => [code, row.w]));
    return { ...this.axes(columns, rows), paint: { cells, system, width, words, stride } };
  }

  axes(columns, rows) {
    const { text, x, y } = this;
    return { text, x, xs: Float64Array.from(columns, (column) => this.xs[column]), y, ys: Float64Array.from(rows, (row) => this.ys[row]) };
  }

  place(column, row) {
    return row * this.xs.length + column;
  }

  numbers(column, row) {
    const place = 3 * this.place(column, row);
    return this.cells.subarray(place, place + 3);
  }

  // What a point came to; null while it is not known.
  at(column, row, checks) {
    if (!this.isKnown[this.place(column, row)]) return null;
    const [utilisation, standing, third] = this.numbers(column, row);
    const word = MAP_STANDING[standing];
    const isCompared = standing < 2 && third >= 0;
    return { standing: word, utilisation: isCompared ? utilisation : null, check: isCompared ? checks[third] : null, reason: word === "not_covered" && third >= 0 ? third : null };
  }
}

// Every so many places of an axis, the last one always.
function along(values, stride) {
  const places = [];
  for (let place = 0; place < values.length; place += stride) places.push(place);
  if (places[places.length - 1] !== values.length - 1) places.push(values.length - 1);
  return places;
}
