#pragma once

#include <QCache>

#include "ui/pairs/shown_pairs.h"
#include "ui/widgets/shelf_view.h"

namespace quarterturn {

// Pairs beside each other, each as one picture with the ring of its angle, whose it is, and a line
// on why it compares badly, why it is like what she asked for, or when it was worn.
class WallOfPairs : public ShelfView {
    Q_OBJECT
  public:
    WallOfPairs(Session& session, ShownPairs& pairs, LaidPairs& laid, QWidget* parent = nullptr);

    void forget_pictures();  // records changed

  protected:
    void arrange(ShelfLayout& layout) const override;
    void paint_heading(QPainter&, int, const QRect&) const override {}
    void changeEvent(QEvent* event) override;
    void paint_tile(QPainter& painter, int position, const QRect& area) const override;
    void want_what_is_seen() override;

  private:
    void show_again(PhotoId photo);
    QImage picture(int position, const TwoPhotos& two, QSize size) const;
    // How the heads surely lie upon each other; null where that is not known.
    const LaidPair* surely_laid(int position, const TwoPhotos& two) const;
    void paint_two(QPainter& painter, int position, const TwoPhotos& two, const QRectF& area) const;
    void paint_which(QPainter& painter, const PairPlace& place, int side, const QRectF& cell) const;
    void paint_words(QPainter& painter, int position, const QRect& area) const;
    QString last_line(int position, bool& unfair) const;
    int words_height() const;

    Session& session_;
    ShownPairs& pairs_;
    LaidPairs& laid_;
    // As large as they are painted, so that scrolling paints none of them again.
    mutable QCache<qint64, QImage> painted_;
    mutable QSize painted_size_;
};

}  // namespace quarterturn
