'use client';

import { useRouter } from 'next/navigation';
import { labelPath } from '@/lib/plant/label-code';
import { Scanner } from './scanner';

/** The scanner as a page of the register: a code leads to what carries it. */
export function ScanHere({ readerPath }: { readerPath: string }) {
  const router = useRouter();
  return <Scanner readerPath={readerPath} onCode={(code) => router.push(labelPath(code))} />;
}
