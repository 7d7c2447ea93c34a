#pragma once

#include "ui/widgets/measured_text.h"
#include "ui/widgets/text_button.h"

namespace quarterturn {

// A sentence that goes somewhere when it is clicked: "Evening look: no sharp photo of the back."
// It wraps, is underlined, and has a small arrow before it.
class SentenceLink : public TextButton {
    Q_OBJECT
  public:
    explicit SentenceLink(const QString& sentence, QWidget* parent = nullptr);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    QRect text_area(int width) const;

    mutable MeasuredText laid_;
};

}  // namespace quarterturn
