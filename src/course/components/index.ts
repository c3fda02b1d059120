import AngleArc from './AngleArc.astro';
import Arrow from './Arrow.astro';
import Axes from './Axes.astro';
import BoneDrawing from './BoneDrawing.astro';
import Card from './Card.astro';
import CommonPractice from './CommonPractice.astro';
import Dot from './Dot.astro';
import Exercise from './Exercise.astro';
import Eye from './Eye.astro';
import Failure from './Failure.astro';
import Figure from './Figure.astro';
import Label from './Label.astro';
import Line from './Line.astro';
import MovingPlate from './MovingPlate.astro';
import Plate from './Plate.astro';
import Prediction from './Prediction.astro';
import Source from './Source.astro';
import Sum from './Sum.astro';
import Term from './Term.astro';
import Transfer from './Transfer.astro';
import WorkedExample from './WorkedExample.astro';

/** What a lesson may use without importing it. */
export const lessonComponents = {
  AngleArc,
  Arrow,
  Axes,
  BoneDrawing,
  Card,
  CommonPractice,
  Dot,
  Exercise,
  Eye,
  Failure,
  Figure,
  Label,
  Line,
  MovingPlate,
  Plate,
  Prediction,
  Source,
  Sum,
  Term,
  Transfer,
  WorkedExample,
};
