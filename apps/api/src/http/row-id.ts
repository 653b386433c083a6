import { Param, type PipeTransform } from '@nestjs/common';
import { rowId } from '../../../../libs/contracts';
import { ProblemError } from './problem-error';

/** An id in the path; text that can be no id names nothing, and is answered so. */
export class RowIdPipe implements PipeTransform<string, number> {
  transform(text: string): number {
    const read = rowId.safeParse(/^\d{1,10}$/.test(text) ? Number(text) : NaN);
    if (!read.success) throw new ProblemError(404, 'not-found', `There is nothing under '${text.slice(0, 40)}'.`);
    return read.data;
  }
}

export const RowIdParam = (name: string): ParameterDecorator => Param(name, new RowIdPipe());
