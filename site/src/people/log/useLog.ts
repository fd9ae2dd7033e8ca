import { useEffect, useState } from 'preact/hooks';
import { type Checked, type Failure, listSessionsOf } from '../../storage/index.ts';
import { useKeeping } from '../Keeping.ts';

/** The log of a person, read again at every change; nothing while it is read the first time. */
export function useLog(
  clientId: string,
): ({ readonly kind: 'list' } & Checked<'sessions'>) | Failure | undefined {
  const { database, people } = useKeeping();
  const [log, setLog] = useState<Awaited<ReturnType<typeof listSessionsOf>>>();
  useEffect(() => {
    let isWanted = true;
    void listSessionsOf(database, clientId).then((read) => isWanted && setLog(read));
    return () => {
      isWanted = false;
    };
  }, [database, people, clientId]);
  return log;
}
