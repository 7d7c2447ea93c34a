#pragma once

#include <QComboBox>
#include <optional>
#include <vector>

#include "indexer/record/people.h"

namespace quarterturn {

// One wedding out of many, each with its day and year.
class WeddingChoice : public QComboBox {
    Q_OBJECT
  public:
    explicit WeddingChoice(QWidget* parent = nullptr);

    // With the one that is wished for chosen, else the first; answers which.
    std::optional<WeddingId> show_weddings(const std::vector<Wedding>& weddings,
                                           std::optional<WeddingId> wished);

  signals:
    void chosen(quarterturn::WeddingId wedding);
};

}  // namespace quarterturn
