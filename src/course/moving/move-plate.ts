import type { DrawnBone } from './draw-bones.ts';
import { type PlateData, printed, unitOf } from './plate.ts';
import { stage } from './stage.ts';

/** Lets the reader move a plate of a lesson: each slider sets one input, the drawing and the readings follow. */
export function movePlate(plate: HTMLElement): void {
  const data = JSON.parse(plate.querySelector('script')!.textContent!) as PlateData;
  const show = stage(data);
  const sliders = [...plate.querySelectorAll<HTMLInputElement>('input[type="range"]')];
  const values = plate.querySelectorAll('.value');
  const readings = plate.querySelectorAll('.reading');
  const drawing = plate.querySelector('.bones')!;

  function update() {
    const shown = show(sliders.map((slider) => slider.valueAsNumber));
    redraw(drawing, shown.bones);
    data.inputs.forEach((input, index) => {
      const text = printed(sliders[index]!.valueAsNumber, input.step) + unitOf(input);
      values[index]!.textContent = text;
      sliders[index]!.setAttribute('aria-valuetext', text);
    });
    shown.readings.forEach((reading, index) => {
      readings[index]!.textContent = reading;
    });
  }

  for (const slider of sliders) slider.addEventListener('input', update);
  plate.querySelector('button')!.addEventListener('click', () => {
    for (const slider of sliders) slider.value = slider.dataset.rest!;
    update();
  });
  // A slider may have been moved before this was loaded.
  update();
}

/** Sets the paths of the bones anew and puts them in order, the furthest first. */
function redraw(drawing: Element, bones: readonly DrawnBone[]) {
  for (const bone of bones) {
    const group = drawing.querySelector(`[data-bone="${bone.name}"]`)!;
    for (const part of ['outline', 'spine', 'base', 'sight'] as const) {
      group.querySelector(`.${part}`)?.setAttribute('d', bone[part]);
    }
    drawing.append(group);
  }
}
