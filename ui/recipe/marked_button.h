#pragma once

#include "ui/widgets/text_button.h"

namespace quarterturn {

enum class Mark { folded, unfolded, written, empty, bar, warning };

// Words with a mark before them that says by its shape what they are: a triangle to unfold, a full
// or an empty ring, a bar across a circle, a triangle with a point. The words wrap.
class MarkedButton : public TextButton {
    Q_OBJECT
  public:
    MarkedButton(Mark mark, const QString& text, QWidget* parent = nullptr);

    void show_mark(Mark mark);
    Mark mark() const { return mark_; }
    void show_text(const QString& text);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    int mark_width() const;
    QRect text_area(int width) const;

    Mark mark_;
};

}  // namespace quarterturn
