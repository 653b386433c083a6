import { Body, Controller, Get, HttpCode, Inject, Param, Patch, Post, Req, Res } from '@nestjs/common';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { createZodDto, ZodResponse } from 'nestjs-zod';
import {
  changePhoto as changePhotoSchema,
  MOST_PHOTO_BYTES,
  newPhoto,
  removePhoto as removePhotoSchema,
  ticketView,
} from '../../../../libs/contracts';
import {
  changePhoto,
  removePhoto,
  takePhoto,
  viewPhoto,
  type Actor,
  type Pictures,
  type Ports,
} from '../../../../libs/usecases';
import { CurrentActor } from '../auth/current-actor';
import { Permit } from '../auth/permit';
import { answer } from '../http/answer';
import { IfMatch } from '../http/if-match';
import { readUpload } from '../http/read-upload';
import { RowIdParam } from '../http/row-id';
import { Says } from '../open-api/says';
import { PICTURES, PORTS } from '../tokens';
import { readGiven } from '../http/validation';

class TicketViewDto extends createZodDto(ticketView) {}
class ChangePhotoDto extends createZodDto(changePhotoSchema) {}
class RemovePhotoDto extends createZodDto(removePhotoSchema) {}

@Controller()
@Says('Photos of intake, inspection and handover, without a word about where they were taken.')
export class PhotosController {
  constructor(
    @Inject(PORTS) private readonly ports: Ports,
    @Inject(PICTURES) private readonly pictures: Pictures,
  ) {}

  @Post('tickets/:id/photos')
  @HttpCode(200)
  @Permit('take-photos')
  @ZodResponse({ status: 200, type: TicketViewDto })
  @Says('Adds a photo: the fields stage, position, place and caption, then one file named photo.', {
    takes: 'multipart/form-data',
  })
  async take(@RowIdParam('id') id: number, @Req() request: FastifyRequest, @CurrentActor() actor: Actor) {
    const { fields, file } = await readUpload(request, 'photo', MOST_PHOTO_BYTES);
    const given = readGiven(newPhoto, fields);
    return answer(await takePhoto({ ...this.ports, pictures: this.pictures }, actor, { ...given, id, sent: file }));
  }

  @Patch('tickets/:id/photos/:photoId')
  @Permit('take-photos')
  @ZodResponse({ status: 200, type: TicketViewDto })
  @Says('Changes what stands under a photo, and whether the handover sheet shows it.')
  async change(
    @RowIdParam('id') id: number,
    @RowIdParam('photoId') photoId: number,
    @IfMatch() version: number,
    @Body() input: ChangePhotoDto,
    @CurrentActor() actor: Actor,
  ) {
    return answer(await changePhoto(this.ports, actor, { ...input, id, photoId, version }));
  }

  @Post('tickets/:id/photos/:photoId/remove')
  @HttpCode(200)
  @Permit('take-photos')
  @ZodResponse({ status: 200, type: TicketViewDto })
  @Says('Takes a photo away with a reason; its pictures are deleted, that there was one stays.')
  async remove(
    @RowIdParam('id') id: number,
    @RowIdParam('photoId') photoId: number,
    @IfMatch() version: number,
    @Body() input: RemovePhotoDto,
    @CurrentActor() actor: Actor,
  ) {
    return answer(await removePhoto(this.ports, actor, { ...input, id, photoId, version }));
  }

  @Get('photos/:name')
  @Permit('see-tickets')
  @Says('A photo as it is kept.', { answers: ['image/jpeg'] })
  full(@Param('name') name: string, @CurrentActor() actor: Actor, @Res() reply: FastifyReply) {
    return this.send(name, 'full', actor, reply);
  }

  @Get('photos/:name/thumb')
  @Permit('see-tickets')
  @Says('A photo, small.', { answers: ['image/jpeg'] })
  thumb(@Param('name') name: string, @CurrentActor() actor: Actor, @Res() reply: FastifyReply) {
    return this.send(name, 'thumb', actor, reply);
  }

  /** A picture is only ever a picture: of its own type, as a download, and nothing in it may run or be asked for. */
  private async send(name: string, size: 'full' | 'thumb', actor: Actor, reply: FastifyReply): Promise<void> {
    const data = answer(await viewPhoto(this.ports, actor, { name, size }));
    await reply
      .header('content-type', 'image/jpeg')
      .header('content-disposition', `attachment; filename="${name}.jpg"`)
      .header('x-content-type-options', 'nosniff')
      .header('content-security-policy', "default-src 'none'; sandbox")
      // Under one name there is only ever one picture; on this device alone, since not everybody may see it.
      .header('cache-control', 'private, max-age=86400, immutable')
      .send(Buffer.from(data));
  }
}
