/** From a camera's file to a picture that can be stored and sent. */
export { lookAt, type PictureDoubt } from './doubts.ts';
export { hasLocation } from './location.ts';
export { sha256Of, takePicture } from './take-picture.ts';
