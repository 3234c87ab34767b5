// Drawings are to scale: every coordinate is read back from the SVG and compared with the project's own millimetres.
import assert from 'node:assert/strict';
import { after, test } from 'node:test';
import { closeBrowsers } from './browsers.mjs';
import { checksOf, untilSheet, worksheet } from './check-page.mjs';
import { checkPage, sample, stretched } from './projects.mjs';
import { inWords, visit } from './visit.mjs';

after(closeBrowsers);

/** Coordinates are written with few decimals; half of the last one is what may be lost, at each end of a length. */
const WRITTEN_PX = 0.06;

/** Every mark of a drawing with the points that it is drawn by. */
function marksOf(root, view) {
  return root.evaluate((shadow, name) => {
    const svg = shadow.querySelector(`.results svg[data-drawing="${name}"]`);
    const numbers = (text) => (text.match(/-?\d+(\.\d+)?(e-?\d+)?/g) ?? []).map(Number);
    const pairs = (list) => list.reduce((all, value, place) => (place % 2 ? [...all.slice(0, -1), [...all[all.length - 1], value]] : [...all, [value]]), []);
    const at = (element, ...names) => names.map((one) => Number(element.getAttribute(one)));
    const marks = [...svg.querySelectorAll('*')].filter((element) => !['g', 'title'].includes(element.localName)).map((element) => ({
      shape: element.localName,
      class: element.getAttribute('class'),
      of: element.getAttribute('data-of') ?? element.closest('[data-of]')?.getAttribute('data-of') ?? null,
      text: element.localName === 'text' ? element.textContent : null,
      style: element.getAttribute('style'),
      points: { line: () => [at(element, 'x1', 'y1'), at(element, 'x2', 'y2')], circle: () => [at(element, 'cx', 'cy')], text: () => [at(element, 'x', 'y')],
        rect: () => [at(element, 'x', 'y')], path: () => pairs(numbers(element.getAttribute('d'))) }[element.localName]?.() ?? pairs(numbers(element.getAttribute('points') ?? '')),
    }));
    return { marks, mmPerUnit: Number(svg.getAttribute('data-mm-per-unit')), box: svg.getAttribute('viewBox').split(' ').map(Number) };
  }, view);
}

const extent = (points) => {
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
};

const near = (left, right, slack, words) => assert.ok(Math.abs(left - right) <= slack, `${words}: ${left} against ${right}`);

for (const [words, project] of [['a cabinet', sample()], ['a cabinet three times as wide as deep', stretched(3)], ['a cabinet three times as deep as wide', stretched(1 / 3)]]) {
  for (const browser of ['chromium', 'firefox']) {
    test(`the plan of ${words} is to scale ${inWords({ browser })}`, () => visit({ browser, page: checkPage('file', project) }, async ({ page }) => {
      const root = await worksheet(page);
      await untilSheet(page, root, 'the plan is drawn', (shadow) => shadow.querySelector('.results svg[data-drawing="plan"] [data-of]'));
      const { marks, mmPerUnit, box } = await marksOf(root, 'plan');
      const { cabinet, slab } = project;
      const outline = extent(marks.find((mark) => mark.of === 'cabinet' && mark.shape === 'polygon').points);
      const slack = WRITTEN_PX * mmPerUnit * 2;
      near((outline.right - outline.left) * mmPerUnit, cabinet.width_mm, slack, 'width');
      near((outline.bottom - outline.top) * mmPerUnit, cabinet.depth_mm, slack, 'depth');
      const origin = [(outline.left + outline.right) / 2, (outline.top + outline.bottom) / 2];
      const millimetres = ([x, y]) => [(x - origin[0]) * mmPerUnit, (origin[1] - y) * mmPerUnit];
      for (const [place, foot] of cabinet.feet.entries()) {
        const { left, right, top, bottom } = extent(marks.find((mark) => mark.of === `foot ${place + 1}` && mark.shape === 'polygon').points);
        const [x, y] = millimetres([(left + right) / 2, (top + bottom) / 2]);
        near(x, foot.at_mm[0], slack, `foot ${place + 1}, to the right`);
        near(y, foot.at_mm[1], slack, `foot ${place + 1}, to the rear, which is on top`);
        near((right - left) * mmPerUnit, foot.size_mm[0], slack, `foot ${place + 1}, width`);
        near((bottom - top) * mmPerUnit, foot.size_mm[1], slack, `foot ${place + 1}, depth`);
      }
      for (const [place, anchor] of cabinet.anchors.entries()) {
        const [x, y] = millimetres(marks.find((mark) => mark.of === `anchor ${place + 1}` && mark.shape === 'circle').points[0]);
        near(x, anchor.at_mm[0], slack, `anchor ${place + 1}, to the right`);
        near(y, anchor.at_mm[1], slack, `anchor ${place + 1}, to the rear`);
      }
      const edge = marks.find((mark) => mark.of === 'edge left' && mark.shape === 'line');
      if (edge) near(-millimetres(edge.points[0])[0], slab.edges_mm.left, slack, 'the left edge of the slab');
      else assert.ok(marks.some((mark) => mark.of === 'edge left'), 'the left edge of the slab is drawn');
      for (const mark of marks) {
        assert.equal(mark.style, null, 'positions are attributes');
        for (const [x, y] of mark.points) assert.ok(x >= box[0] - 1 && x <= box[0] + box[2] + 1 && y >= box[1] - 1 && y <= box[1] + box[3] + 1, `${mark.class} ${mark.of} at ${x}, ${y} leaves the drawing`);
      }
    }));
  }

  test(`plan and elevation of ${words} have one scale, and heights are true`, () => visit({ page: checkPage('file', project) }, async ({ page }) => {
    const root = await worksheet(page);
    await untilSheet(page, root, 'both are drawn', (shadow) => ['plan', 'elevation'].every((view) => shadow.querySelector(`.results svg[data-drawing="${view}"] [data-of]`)));
    const [plan, elevation] = [await marksOf(root, 'plan'), await marksOf(root, 'elevation')];
    const scale = elevation.mmPerUnit;
    const shown = await root.evaluate((shadow) => ['plan', 'elevation'].map((view) => {
      const svg = shadow.querySelector(`.results svg[data-drawing="${view}"]`);
      return svg.getBoundingClientRect().width / svg.viewBox.baseVal.width;
    }));
    near(plan.mmPerUnit / shown[0], scale / shown[1], 0.005 * scale, 'millimetres a pixel on the screen, plan and elevation');
    const outline = extent(elevation.marks.find((mark) => mark.of === 'cabinet' && mark.shape === 'polygon').points);
    near((outline.bottom - outline.top) * scale, project.cabinet.height_mm, WRITTEN_PX * scale * 2, 'height');
    const floor = outline.bottom;
    for (const [place, content] of project.contents.entries()) {
      const box = extent(elevation.marks.find((mark) => mark.of === `contents ${place + 1}` && mark.shape === 'polygon').points);
      near((floor - box.bottom) * scale, content.bottom_mm, WRITTEN_PX * scale * 2, `${content.name}, its bottom`);
      near((box.bottom - box.top) * scale, content.size_mm[2], WRITTEN_PX * scale * 2, `${content.name}, its height`);
    }
    const mass = [project.cabinet.frame, ...project.contents].reduce((sum, one) => sum + one.mass_kg, 0);
    const height = (project.cabinet.frame.mass_kg * project.cabinet.frame.centre_mm[2]
      + project.contents.reduce((sum, one) => sum + one.mass_kg * (one.bottom_mm + one.size_mm[2] / 2), 0)) / mass;
    const centre = elevation.marks.find((mark) => mark.of === 'centre' && mark.shape === 'circle');
    near((floor - centre.points[0][1]) * scale, height, WRITTEN_PX * scale * 2, 'the centre of gravity');
  }));
}

test('the rose reaches as far as the utilisation of each direction, and its governing point is that of the checks', () => visit({ page: checkPage('file', sample()) }, async ({ page }) => {
  const root = await worksheet(page);
  await untilSheet(page, root, 'the rose is drawn', (shadow) => shadow.querySelector('.results svg[data-drawing="rose"] [data-direction-deg]'));
  const points = await root.evaluate((shadow) => [...shadow.querySelectorAll('.results svg[data-drawing="rose"] [data-direction-deg]')].map((element) => ({
    at: [Number(element.getAttribute('cx')), Number(element.getAttribute('cy'))], direction: Number(element.getAttribute('data-direction-deg')), utilisation: Number(element.getAttribute('data-utilisation')),
  })));
  assert.ok(points.length >= 24, `${points.length} directions`);
  // Radius over utilisation is one number for all points that are not cut.
  const uncut = points.filter((point) => point.utilisation < 1.45 && point.utilisation > 0.05);
  assert.ok(uncut.length > 10);
  const [a, b] = [uncut.find((point) => point.direction === 0) ?? uncut[0], uncut.find((point) => Math.abs(point.direction - 180) < 1) ?? uncut[uncut.length >> 1]];
  const turn = (point) => [Math.cos((point.direction * Math.PI) / 180) * point.utilisation, -Math.sin((point.direction * Math.PI) / 180) * point.utilisation];
  const [ta, tb] = [turn(a), turn(b)];
  const radius = Math.hypot(a.at[0] - b.at[0], a.at[1] - b.at[1]) / Math.hypot(ta[0] - tb[0], ta[1] - tb[1]);
  const centre = [a.at[0] - radius * ta[0], a.at[1] - radius * ta[1]];
  for (const point of uncut) {
    const [x, y] = turn(point);
    near(point.at[0], centre[0] + radius * x, 0.3, `${point.direction} degrees, across`);
    near(point.at[1], centre[1] + radius * y, 0.3, `${point.direction} degrees, up`);
  }
  const highest = Math.max(...points.map((point) => point.utilisation));
  const required = Math.max(...(await checksOf(root)).filter((check) => check.role === 'required' && check.utilisation !== null).map((check) => check.utilisation));
  assert.ok(highest <= required * (1 + 1e-9), `${highest} in the rose, ${required} in the list`);
}));

test('a pointer stands where its utilisation is on the scale', () => visit({ page: checkPage('file', sample()) }, async ({ page }) => {
  const root = await worksheet(page);
  const pointers = await root.evaluate((shadow) => [...shadow.querySelectorAll('.results [data-check] [data-pointer]')].map((pointer) => {
    const row = pointer.closest('[data-check]');
    return { place: Number(/translate\(([\d.]+)/.exec(pointer.getAttribute('transform'))[1]), utilisation: Number(row.dataset.utilisation), status: row.dataset.status, filled: pointer.classList.contains('beyond') };
  }));
  assert.ok(pointers.length > 3);
  for (const { place, utilisation, status, filled } of pointers) {
    assert.equal(filled, status === 'fails');
    const expected = 8 + 150 * utilisation;
    if (expected <= 200) near(place, expected, 0.01, `${utilisation}`);
    else assert.equal(place, 214);
  }
}));
