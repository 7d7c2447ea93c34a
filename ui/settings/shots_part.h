#pragma once

#include <vector>

#include "indexer/record/shot_list.h"
#include "ui/settings/settings_part.h"

class QComboBox;
class QGridLayout;
class QPushButton;

namespace quarterturn {

class Session;

// Her own shot list: for every stage and angle whether a look needs it.
class ShotsPart : public SettingsPart {
    Q_OBJECT
  public:
    explicit ShotsPart(Session& session);

    void refresh() override;

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    struct Choice {
        Shot shot;
        QComboBox* need;
    };
    void build_grid(QGridLayout& grid);
    QComboBox* make_choice(const Shot& shot);
    void choose(const Choice& choice);

    Session& session_;
    std::vector<Choice> choices_;
    QPushButton* as_it_came_;
};

}  // namespace quarterturn
