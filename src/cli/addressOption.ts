import { CommandFault } from './fault';

/** The page that was typed as the one that links open, without what follows its `#`. @throws CommandFault where it is no web address */
export function addressOf(typed: string): string {
  const address = URL.canParse(typed) ? new URL(typed) : null;
  if (!address)
    throw new CommandFault(
      `--address: found ${JSON.stringify(typed)}, expected the address of the page, such as https://standclear.example/.`,
    );
  if (!/^https?:$/.test(address.protocol))
    throw new CommandFault(
      `--address: found ${JSON.stringify(typed)}, expected one that begins with https:// or http://.`,
    );
  address.hash = '';
  return address.href;
}
