#pragma once

#include <QWidget>
#include <vector>

#include "ui/shell/screen.h"

class QAbstractButton;
class QButtonGroup;
class QHBoxLayout;
class QMenu;

namespace quarterturn {

class MomentButton;

// The moments of her job as words in one line. Those that the window is too narrow for wait in a
// menu at its end, which stands out while she is in one of them.
class MomentsRow : public QWidget {
    Q_OBJECT
  public:
    explicit MomentsRow(const std::vector<ScreenEntry>& entries, QWidget* parent = nullptr);

    void show_moment(Moment moment);
    QMenu& others() const { return *menu_; }  // empty where all have room

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

  signals:
    void chosen(quarterturn::Moment moment);

  protected:
    void resizeEvent(QResizeEvent* event) override;

  private:
    void share_room();
    void fit_menu();
    int with_room() const;  // how many, from the first on
    void name_more(int count);
    int width_of(int count) const;

    QButtonGroup* moments_;
    MomentButton* more_;
    QMenu* menu_;
    QHBoxLayout* line_;
};

}  // namespace quarterturn
