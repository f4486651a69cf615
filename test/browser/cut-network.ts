import net from 'node:net';

/**
 * A network that can be cut: a port of its own that passes everything on to the app, until it does not. What a browser calls
 * offline does not reach its service worker; this does.
 */
export interface Network {
  /** Where the app is through it. */
  at: string;
  cut(): void;
  mend(): Promise<void>;
  close(): Promise<void>;
}

export async function network(app: string): Promise<Network> {
  const to = Number(new URL(app).port);
  const open = new Set<net.Socket>();
  const server = net.createServer((socket) => {
    const onward = net.connect(to, '127.0.0.1');
    for (const end of [socket, onward]) {
      open.add(end);
      end.on('error', () => end.destroy());
      end.on('close', () => {
        open.delete(end);
        socket.destroy();
        onward.destroy();
      });
    }
    socket.pipe(onward).pipe(socket);
  });
  const listen = (port: number) => new Promise<void>((resolve) => server.listen(port, '127.0.0.1', resolve));
  await listen(0);
  const { port } = server.address() as net.AddressInfo;
  const shut = () => {
    server.close();
    for (const socket of open) socket.destroy();
  };
  return {
    at: `http://localhost:${port}`,
    cut: shut,
    mend: () => listen(port),
    close: async () => {
      if (server.listening) shut();
    },
  };
}
