#pragma once

#include "indexer/record/people.h"
#include "ui/coming_up/record_form.h"

class QDateEdit;
class QLineEdit;

namespace quarterturn {

class PartyField;

// Adds a wedding, or changes one.
class WeddingForm : public RecordForm {
    Q_OBJECT
  public:
    WeddingForm(Session& session, const std::optional<Wedding>& wedding, QWidget* parent = nullptr);

  protected:
    Edit edit() override;

  private:
    std::optional<Wedding> before_;
    QLineEdit* name_;
    QDateEdit* date_;
    QLineEdit* venue_;
    QLineEdit* ready_by_;
    PartyField* party_;
};

}  // namespace quarterturn
