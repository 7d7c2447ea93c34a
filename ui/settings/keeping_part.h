#pragma once

#include "indexer/erasure/retention.h"
#include "ui/settings/settings_part.h"

class QComboBox;
class QPushButton;

namespace quarterturn {

class Notice;
class Session;

// How long looks are kept, and who is proposed for erasure by it.
class KeepingPart : public SettingsPart {
    Q_OBJECT
  public:
    explicit KeepingPart(Session& session);

    void refresh() override;

  private:
    void offer(int years);
    void choose();
    void look_through();
    void show_found(std::vector<PastKeeping> past);
    void add_client(const PastKeeping& past);

    Session& session_;
    QComboBox* years_;
    QPushButton* look_;
    Notice* notice_;
    QLabel* found_words_;
    QVBoxLayout* found_;
    std::vector<PastKeeping> past_;
};

}  // namespace quarterturn
