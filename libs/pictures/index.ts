/**
 * The only room that knows the picture library: reads what somebody sent, and makes it anew from its points.
 *
 *   pictures: Pictures      the port of the use cases, done
 *   addDemoPhotos(ports)    photos for the demo shop
 *   kindOf(bytes)           which kind of picture a file is by its first bytes
 *   holdsAnotherFile(bytes) whether a file can also be read as something else
 */
export { pictures } from './pictures';
export { addDemoPhotos } from './demo-photos';
export { kindOf } from './kind-of';
export { holdsAnotherFile } from './holds-another-file';
