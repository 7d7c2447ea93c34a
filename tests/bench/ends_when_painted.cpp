// Loaded before a Qt program (LD_PRELOAD), ends it as soon as its first window has been painted, so
// that how long it runs is how long one waits for it. It stands in the place of
// QBackingStore::flush(), which Qt calls when a window is painted.

#include <dlfcn.h>
#include <unistd.h>

class QBackingStore;
class QRegion;
class QWindow;
class QPoint;

extern "C" void _ZN13QBackingStore5flushERK7QRegionP7QWindowRK6QPoint(QBackingStore* store,
                                                                      const QRegion& region,
                                                                      QWindow* window,
                                                                      const QPoint& offset) {
    using Flush = void (*)(QBackingStore*, const QRegion&, QWindow*, const QPoint&);
    const auto flush = reinterpret_cast<Flush>(
        dlsym(RTLD_NEXT, "_ZN13QBackingStore5flushERK7QRegionP7QWindowRK6QPoint"));
    flush(store, region, window, offset);
    _exit(0);
}
