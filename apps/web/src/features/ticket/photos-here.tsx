import type { TicketView } from '../../../../../libs/contracts';
import { PhotoThumb } from '../../components/photo-thumb';
import { photoPlace } from './photo-place';
import classes from './photos.module.css';

/** The photos of one place, beside it. */
export function PhotosHere({ ticket, position, place }: { ticket: TicketView; position: string; place: number }) {
  const here = ticket.photos.filter((photo) => photo.position === position && photo.place === place);
  if (here.length === 0) return null;
  return (
    <div className={classes.row}>
      {here.map((photo) => (
        <PhotoThumb key={photo.id} photo={photo} where={photoPlace(ticket, photo)} />
      ))}
    </div>
  );
}
