#pragma once

#include <QListView>

#include "ui/theme/type.h"
#include "ui/widgets/shelf_layout.h"

class QTimer;

namespace quarterturn {

// A long page of tiles on shelves. Only what is seen is read, asked for and painted, however many
// there are. It is a list view for the sake of the keyboard and of screen readers, and lays out and
// paints everything itself. Who derives from it sets the model.
class ShelfView : public QListView {
    Q_OBJECT
  public:
    explicit ShelfView(QWidget* parent = nullptr);

    QRect visualRect(const QModelIndex& index) const override;
    QModelIndex indexAt(const QPoint& point) const override;
    void scrollTo(const QModelIndex& index, ScrollHint hint = EnsureVisible) override;
    void keyboardSearch(const QString&) override {}  // typing goes to a search field
    void reset() override;
    void doItemsLayout() override;
    bool shows(int position) const;  // at least in part

  signals:
    void picked(int position);  // by Return or a double click

  protected:
    virtual void arrange(ShelfLayout& layout) const = 0;  // for the width of the viewport
    virtual void paint_heading(QPainter& painter, int shelf, const QRect& area) const = 0;
    virtual void paint_tile(QPainter& painter, int position, const QRect& area) const = 0;
    virtual void want_what_is_seen() = 0;

    ShelfLayout::Seen seen() const;
    void update_tile(int position);
    static int line_height(TextRole role);

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
    QRect on_screen(QRect on_page) const;
    void pick_current();

    ShelfLayout layout_;
    QTimer* wishing_;
};

}  // namespace quarterturn
