#include "ui/coming_up/look_form.h"

#include <QComboBox>
#include <QLineEdit>

#include "ui/coming_up/record_edits.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr std::array all_worn{Worn::ceremony, Worn::evening, Worn::other};

}  // namespace

LookForm::LookForm(Session& session, const Look& look, QWidget* parent)
    : RecordForm(session, look.id ? tr("Change the look") : tr("A new look"), parent),
      before_(look),
      name_(new QLineEdit(from_utf8(look.name))),
      worn_(new QComboBox) {
    for (const Worn worn : all_worn) worn_->addItem(shown(worn), static_cast<int>(worn));
    worn_->setCurrentIndex(worn_->findData(static_cast<int>(look.worn)));
    name_->setPlaceholderText(tr("low twisted bun"));
    add_field(tr("Look"), name_);
    add_field(tr("Worn"), worn_);
    setFocusProxy(name_);
}

Edit LookForm::edit() {
    Look after = before_;
    after.name = to_utf8(name_->text().trimmed());
    after.worn = static_cast<Worn>(worn_->currentData().toInt());
    return save_look(after);
}

}  // namespace quarterturn
