export { clip, demandOf, readShape, sayAt, sayShape, valueAt, type ReadShape, type ShapeProblem } from './read-shape';
