import { lazyRouteComponent, type AsyncRouteComponent } from '@tanstack/react-router';
import { useReading } from '../lib/use-reading';

/** A page by its name in its file; it is fetched when it is first opened, and written anew when its reader reads otherwise. */
export function pageOf<T extends object, K extends keyof T & string>(
  file: () => Promise<T>,
  name: K,
): AsyncRouteComponent<object> {
  const Page = lazyRouteComponent(file, name) as AsyncRouteComponent<object>;
  const Written = () => {
    useReading();
    return <Page />;
  };
  return Object.assign(Written, { preload: Page.preload });
}
