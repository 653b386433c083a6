import { createZodDto } from 'nestjs-zod';
import * as contracts from '../../../../libs/contracts';

export class ShelfQueryDto extends createZodDto(contracts.shelfQuery) {}
export class ShelfPageDto extends createZodDto(contracts.shelfPage) {}
export class ShelfItemDetailDto extends createZodDto(contracts.shelfItemDetail) {}
export class ShelfPullsDto extends createZodDto(contracts.shelfPulls) {}
export class ReceivePartDto extends createZodDto(contracts.receivePart) {}
export class StockQueryDto extends createZodDto(contracts.stockQuery) {}
export class StockViewDto extends createZodDto(contracts.stockView) {}
export class CountPartDto extends createZodDto(contracts.countPart) {}
export class ShelfMovedDto extends createZodDto(contracts.shelfMoved) {}
export class SetShelfItemDto extends createZodDto(contracts.setShelfItem) {}
export class MarkPulledDto extends createZodDto(contracts.markPulled) {}
export class OrderListDto extends createZodDto(contracts.orderList) {}
export class PlaceOrdersDto extends createZodDto(contracts.placeOrders) {}
