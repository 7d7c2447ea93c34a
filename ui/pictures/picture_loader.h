#pragma once
// Pictures for what is on screen, fetched off the GUI thread: the small one first, the sharp one as
// soon as it is there. The window never waits.

#include <QCache>
#include <QImage>
#include <QObject>
#include <map>
#include <memory>
#include <thread>
#include <vector>

#include "ui/pictures/picture_queue.h"
#include "ui/pictures/picture_source.h"
#include "ui/threads/mailbox.h"

namespace quarterturn {

struct PictureWish {
    Photo photo;
    // Pixels of the screen (device-independent size × device pixel ratio). 0: every pixel of the
    // photo, for judging sharpness.
    int long_edge = small_long_edge;
};

class PictureLoader : public QObject {
    Q_OBJECT
  public:
    // Keeps pictures of `cache_bytes` at most, the least recently shown going first.
    explicit PictureLoader(PictureSourceMaker make_source, qint64 cache_bytes = default_cache_bytes,
                           int threads = 2, QObject* parent = nullptr);
    ~PictureLoader() override;

    // What is at hand: sharp enough for `long_edge`, else the small one, else null.
    QImage at_hand(PhotoId photo, int long_edge) const;
    // Whether that is as sharp as was asked for, or was refused: nothing better is to come.
    bool is_at_hand(PhotoId photo, int long_edge) const;

    // Says what `viewer` shows now, the most important first, in place of what it said before. Ask
    // for all that is on screen, also what is at hand already. A viewer that is destroyed is
    // forgotten.
    void want(const QObject* viewer, const std::vector<PictureWish>& wishes);

    void forget();  // what is at hand, and what was refused

    static constexpr qint64 default_cache_bytes = qint64{192} << 20;

  signals:
    void arrived(quarterturn::PhotoId photo);
    void refused(quarterturn::PhotoId photo, const QString& why);
    void nothing_opens(const QString& why);  // once, however many photos are asked for

  private:
    using Key = std::pair<qint64, int>;  // photo; small_key, or sharp_key() of what was asked for
    static constexpr int small_key = -1;

    static int sharp_key(int long_edge);
    bool has(PhotoId photo, int key) const;
    void work();
    void keep(const PictureJob& job, const FetchedPicture& picture);
    void watch(const QObject* viewer);

    PictureSourceMaker make_source_;
    PictureQueue queue_;
    mutable QCache<Key, QImage> pictures_;
    std::set<const QObject*> watched_;
    std::set<Key> refused_;
    bool said_nothing_opens_ = false;
    Mailbox mailbox_;
    std::vector<std::jthread> threads_;
};

}  // namespace quarterturn
