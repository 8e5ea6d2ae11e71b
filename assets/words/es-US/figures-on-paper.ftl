### Labels in the drawings of the papers.

figure-best-weeks = mejores semanas para sellar
figure-gap = — abertura (izq.)
figure-moisture = - - humedad (der.)
figure-as-installed = al instalar
figure-closed = cerrada
figure-bead-holds = aguanta
figure-bead-holds-here = esta aguanta
figure-bead-torn = cordón roto
figure-bead-tears-behind = forzado por detrás
figure-bead-squeezed-out = cordón exprimido
