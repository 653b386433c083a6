export { clip, readShape, sayAt, sayShape, valueAt, type ReadShape, type ShapeProblem } from './read-shape';
