#pragma once

#include <QCache>
#include <QListView>

#include "ui/all_photos/found_photos.h"
#include "ui/all_photos/shelf_layout.h"
#include "ui/theme/type.h"

class QTimer;

namespace quarterturn {

// A long page of photos on their shelves. Only what is seen is read, asked for and painted, however
// many there are. It is a list view for the sake of the keyboard and of screen readers, and lays
// out and paints everything itself.
class PhotoShelves : public QListView {
    Q_OBJECT
  public:
    PhotoShelves(Session& session, FoundPhotos& photos, QWidget* parent = nullptr);

    QRect visualRect(const QModelIndex& index) const override;
    QModelIndex indexAt(const QPoint& point) const override;
    void scrollTo(const QModelIndex& index, ScrollHint hint = EnsureVisible) override;
    void keyboardSearch(const QString&) override {}  // typing goes to the search field
    void reset() override;
    void doItemsLayout() override;

  signals:
    void opened(quarterturn::PhotoId photo);

  protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void scrollContentsBy(int dx, int dy) override;
    void updateGeometries() override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;
    QModelIndex moveCursor(CursorAction action, Qt::KeyboardModifiers modifiers) override;
    int horizontalOffset() const override { return 0; }
    int verticalOffset() const override;
    bool isIndexHidden(const QModelIndex&) const override { return false; }
    void setSelection(const QRect&, QItemSelectionModel::SelectionFlags) override {}

  private:
    static constexpr int found_lines = 2;  // below a picture, while words are looked for
    static int line_height(TextRole role);

    ShelfLayout::Seen seen() const;
    QRect on_screen(QRect on_page) const;
    QString caption(const Photo& photo) const;
    void paint_heading(QPainter& painter, const Shelf& shelf, const QRect& area) const;
    void draw_found(QPainter& painter, const QRect& area, const FoundText& found) const;
    void paint_photo(QPainter& painter, int position) const;
    QImage picture(PhotoId photo, QSize size) const;
    void want_what_is_seen();
    void open_current();

    Session& session_;
    FoundPhotos& photos_;
    ShelfLayout layout_;
    // Pictures as large as they are painted, so that scrolling scales none of them again.
    mutable QCache<qint64, QImage> painted_;
    mutable QSize painted_size_;
    QTimer* wishing_;
};

}  // namespace quarterturn
