#include "ui/coming_up/client_form.h"

#include <QLineEdit>
#include <QPlainTextEdit>

#include "ui/coming_up/record_edits.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr int note_lines = 3;

}  // namespace

ClientForm::ClientForm(Session& session, const std::optional<Client>& client, QWidget* parent)
    : RecordForm(session, client ? tr("Change the client") : tr("A new client"), parent),
      before_(client),
      name_(new QLineEdit),
      note_(new QPlainTextEdit) {
    note_->setFixedHeight(note_->fontMetrics().lineSpacing() * (note_lines + 1));
    note_->setTabChangesFocus(true);
    add_field(tr("Name"), name_);
    add_field(tr("Note"), note_);
    setFocusProxy(name_);
    if (!client) return;
    name_->setText(from_utf8(client->name));
    note_->setPlainText(from_utf8(client->note));
}

Edit ClientForm::edit() {
    Client after = before_.value_or(Client{});
    after.name = to_utf8(name_->text().trimmed());
    after.note = to_utf8(note_->toPlainText().trimmed());
    return save_client(after);
}

}  // namespace quarterturn
