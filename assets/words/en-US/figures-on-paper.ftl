### Labels in the drawings of the papers.

figure-best-weeks = best weeks to seal
figure-gap = — gap (left)
figure-moisture = - - moisture (right)
figure-as-installed = as installed
figure-closed = closed
figure-bead-holds = bead holds
figure-bead-holds-here = this one holds
figure-bead-torn = bead torn
figure-bead-tears-behind = overloaded at the back
figure-bead-squeezed-out = bead squeezed out
