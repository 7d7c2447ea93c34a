#pragma once

#include <QImage>
#include <QWidget>
#include <optional>

#include "indexer/image/similarity.h"
#include "indexer/sheet/page.h"
#include "ui/widgets/text_button.h"

namespace quarterturn {

// A photo laid upon another one, or whole.
struct FramePicture {
    QImage picture;  // upright, not yet turned
    bool mirrored = false;
    std::optional<Similarity> lay;  // upon the first; nothing: whole
    Box window{};                   // what is shown of the first

    void draw(QPainter& painter, const QRectF& cell, const QPalette& palette) const;
};

// It alone, as large as there is room.
class LaidFrame : public QWidget {
    Q_OBJECT
  public:
    using QWidget::QWidget;
    void show_frame(const FramePicture& frame);

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    FramePicture frame_;
};

// The same small, in a row, with a day and a word below.
class FrameButton : public TextButton {
    Q_OBJECT
  public:
    FrameButton(const QString& day, const QString& word, QWidget* parent = nullptr);
    void show_frame(const FramePicture& frame, bool current);
    QSize sizeHint() const override;

  protected:
    void keyPressEvent(QKeyEvent* event) override;  // leaves the arrow keys to the page
    void paintEvent(QPaintEvent* event) override;

  private:
    QString word_;
    FramePicture frame_;
    bool current_ = false;
};

}  // namespace quarterturn
