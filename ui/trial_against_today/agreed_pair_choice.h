#pragma once

#include <QWidget>
#include <optional>

#include "indexer/looks/as_made.h"

class QComboBox;
class QListWidget;
class QVBoxLayout;

namespace quarterturn {

class WeddingChoice;

// Which wedding, whose look, and which angle.
class AgreedPairChoice : public QWidget {
    Q_OBJECT
  public:
    explicit AgreedPairChoice(QWidget* parent = nullptr);

    void show_weddings(const std::vector<Wedding>& weddings, std::optional<WeddingId> chosen);
    // Answers the look that is chosen then: the one wished for where it is there, else the first.
    std::optional<LookId> show_looks(const WeddingAsMade& made, std::optional<LookId> wished);
    // The same of the angle; unless one is wished for, the first with both photos.
    std::optional<Angle> show_angles(const std::vector<AgreedPair>& pairs,
                                     std::optional<Angle> wished);

  signals:
    void wedding_chosen(quarterturn::WeddingId wedding);
    void look_chosen(quarterturn::LookId look);
    void angle_chosen(int place);  // among the pairs

  private:
    void add(QVBoxLayout& column, const QString& name, QWidget* choice);

    WeddingChoice* weddings_;
    QComboBox* looks_;
    QListWidget* angles_;
};

}  // namespace quarterturn
