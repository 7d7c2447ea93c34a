#pragma once

#include "indexer/record/people.h"
#include "ui/coming_up/record_form.h"

class QCheckBox;
class QComboBox;
class QDateEdit;
class QTimeEdit;
class QVBoxLayout;

namespace quarterturn {

// Adds a sitting, or changes one. The one given says what stands in the fields at first; it is
// new when it has no number.
class SittingForm : public RecordForm {
    Q_OBJECT
  public:
    SittingForm(Session& session, const Sitting& sitting, QWidget* parent = nullptr);

  protected:
    Edit edit() override;

  private:
    void fill_choices();
    void offer_looks();  // of the client chosen
    std::vector<Look> chosen_looks() const;

    Sitting before_;
    QComboBox* client_;
    QComboBox* kind_;
    QComboBox* wedding_;
    QDateEdit* date_;
    QTimeEdit* starts_;
    QTimeEdit* ends_;
    QWidget* looks_;
    QVBoxLayout* looks_column_;
    std::vector<std::pair<Look, QCheckBox*>> offered_;
};

}  // namespace quarterturn
