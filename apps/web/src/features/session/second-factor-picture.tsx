import { drawingSVG, qrcode } from 'bwip-js/browser';
import { useMemo } from 'react';
import classes from './second-factor-picture.module.css';

/** The address as a QR code for an authenticator app; what stands in it can be typed as well. */
export function SecondFactorPicture({ address }: { address: string }) {
  const picture = useMemo(() => qrcode({ bcid: 'qrcode', text: address, scale: 4 }, drawingSVG()), [address]);
  return (
    <img
      className={classes.picture}
      src={`data:image/svg+xml,${encodeURIComponent(picture)}`}
      alt="QR code for an app that shows one-time codes; the key to type stands below"
    />
  );
}
