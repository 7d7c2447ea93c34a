#pragma once

#include <QStackedWidget>

namespace quarterturn {

// Pages of which one is seen. Only that one counts for how small the window may become.
class PageStack : public QStackedWidget {
    Q_OBJECT
  public:
    explicit PageStack(QWidget* parent = nullptr);

    QSize minimumSizeHint() const override;
    bool hasHeightForWidth() const override;
    int heightForWidth(int width) const override;
};

}  // namespace quarterturn
