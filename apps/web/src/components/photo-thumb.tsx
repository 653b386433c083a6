import { Modal } from '@mantine/core';
import { useState } from 'react';
import type { PhotoView } from '../../../../libs/contracts';
import { sayInstant } from '../lib/say';
import classes from './photo-thumb.module.css';

/** What a photo shows, for those who cannot see it. */
function photoWords({ caption, stage }: Pick<PhotoView, 'caption' | 'stage'>, where: string): string {
  return `${caption === '' ? 'Photo' : caption}: ${where}, at ${stage}`;
}

/** A photo, small; pressed, it is shown whole. */
export function PhotoThumb({ photo, where }: { photo: PhotoView; where: string }) {
  const [open, setOpen] = useState(false);
  const words = photoWords(photo, where);
  return (
    <>
      <button type="button" className={classes.thumb} onClick={() => setOpen(true)}>
        <img src={`/api/photos/${photo.name}/thumb`} alt={words} loading="lazy" />
      </button>
      <Modal opened={open} onClose={() => setOpen(false)} title={words} size="auto">
        <img src={`/api/photos/${photo.name}`} alt={words} className={classes.full} />
        <p className="soft">{`${sayInstant(photo.at)}${photo.by ? `, ${photo.by}` : ''}`}</p>
      </Modal>
    </>
  );
}
