#pragma once

#include <QWidget>

#include "indexer/record/consent.h"

class QComboBox;
class QLabel;
class QLineEdit;

namespace quarterturn {

// Who says it: she herself, or her parent or guardian, and how old she is.
class GiverFields : public QWidget {
    Q_OBJECT
  public:
    explicit GiverFields(QWidget* parent = nullptr);

    void show_giver(std::optional<AgeBand> age, const ConsentEntry* before);
    void say_in(ConsentEntry& entry) const;

  private:
    void show_guardian();

    QComboBox* giver_;
    QComboBox* age_;
    QLineEdit* guardian_;
    QLabel* guardian_name_;
};

}  // namespace quarterturn
