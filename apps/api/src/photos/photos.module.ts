import { Module } from '@nestjs/common';
import { pictures } from '../../../../libs/pictures';
import { PICTURES } from '../tokens';
import { PhotosController } from './photos.controller';

@Module({
  controllers: [PhotosController],
  providers: [{ provide: PICTURES, useValue: pictures }],
  exports: [PICTURES],
})
export class PhotosModule {}
