import { createZodDto } from 'nestjs-zod';
import {
  authorise,
  cancelTicket,
  changeTag,
  explainQuery,
  holdTicket,
  moveStage,
  openTicket,
  pickPart,
  placeExplanation,
  recordPlaces,
  setLabour,
  tellAnswer,
  tellRequest,
  ticketView,
  tickSafety,
  waitForPart,
} from '../../../../libs/contracts';

export class OpenTicketDto extends createZodDto(openTicket) {}
export class ChangeTagDto extends createZodDto(changeTag) {}
export class RecordPlacesDto extends createZodDto(recordPlaces) {}
export class WaitForPartDto extends createZodDto(waitForPart) {}
export class PickPartDto extends createZodDto(pickPart) {}
export class TellRequestDto extends createZodDto(tellRequest) {}
export class TellAnswerDto extends createZodDto(tellAnswer) {}
export class SetLabourDto extends createZodDto(setLabour) {}
export class AuthoriseDto extends createZodDto(authorise) {}
export class TickSafetyDto extends createZodDto(tickSafety) {}
export class MoveStageDto extends createZodDto(moveStage) {}
export class HoldTicketDto extends createZodDto(holdTicket) {}
export class CancelTicketDto extends createZodDto(cancelTicket) {}
export class TicketViewDto extends createZodDto(ticketView) {}
export class ExplainQueryDto extends createZodDto(explainQuery) {}
export class PlaceExplanationDto extends createZodDto(placeExplanation) {}
