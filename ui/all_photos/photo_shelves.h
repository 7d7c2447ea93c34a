#pragma once

#include <QCache>

#include "ui/all_photos/found_photos.h"
#include "ui/widgets/shelf_view.h"

namespace quarterturn {

// The photos that were found, on their shelves.
class PhotoShelves : public ShelfView {
    Q_OBJECT
  public:
    PhotoShelves(Session& session, FoundPhotos& photos, QWidget* parent = nullptr);

  signals:
    void opened(quarterturn::PhotoId photo);

  protected:
    void arrange(ShelfLayout& layout) const override;
    void paint_heading(QPainter& painter, int shelf, const QRect& area) const override;
    void paint_tile(QPainter& painter, int position, const QRect& area) const override;
    void want_what_is_seen() override;

  private:
    static constexpr int found_lines = 2;  // below a picture, while words are looked for

    QString caption(const Photo& photo) const;
    void draw_found(QPainter& painter, const QRect& area, const FoundText& found) const;
    QImage picture(PhotoId photo, QSize size) const;

    Session& session_;
    FoundPhotos& photos_;
    // Pictures as large as they are painted, so that scrolling scales none of them again.
    mutable QCache<qint64, QImage> painted_;
    mutable QSize painted_size_;
};

}  // namespace quarterturn
