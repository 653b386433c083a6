import { Module } from '@nestjs/common';
import { CallbacksController } from './callbacks.controller';
import { LettersController } from './letters.controller';

/** Letters come first: their addresses would else be read as the id of a callback. */
@Module({ controllers: [LettersController, CallbacksController] })
export class CallbacksModule {}
