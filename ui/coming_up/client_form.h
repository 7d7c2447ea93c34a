#pragma once

#include "indexer/record/people.h"
#include "ui/coming_up/record_form.h"

class QLineEdit;
class QPlainTextEdit;

namespace quarterturn {

// Adds a client, or changes one.
class ClientForm : public RecordForm {
    Q_OBJECT
  public:
    ClientForm(Session& session, const std::optional<Client>& client, QWidget* parent = nullptr);

  protected:
    Edit edit() override;

  private:
    std::optional<Client> before_;
    QLineEdit* name_;
    QPlainTextEdit* note_;
};

}  // namespace quarterturn
