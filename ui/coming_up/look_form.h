#pragma once

#include "indexer/record/people.h"
#include "ui/coming_up/record_form.h"

class QComboBox;
class QLineEdit;

namespace quarterturn {

// Changes a look, or adds the one given, which has no number yet.
class LookForm : public RecordForm {
    Q_OBJECT
  public:
    LookForm(Session& session, const Look& look, QWidget* parent = nullptr);

  protected:
    Edit edit() override;

  private:
    Look before_;
    QLineEdit* name_;
    QComboBox* worn_;
};

}  // namespace quarterturn
