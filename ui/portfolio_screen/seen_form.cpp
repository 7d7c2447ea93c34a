#include "ui/portfolio_screen/seen_form.h"

#include <QCheckBox>
#include <QComboBox>

#include "ui/portfolio_screen/clients_seen.h"
#include "ui/portfolio_screen/photo_edits.h"
#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/narrow_choice.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

enum class FaceAnswer { unsaid, yes, no };

FaceAnswer answer_in(const Seen& seen) {
    if (!seen.face) return FaceAnswer::unsaid;
    return *seen.face ? FaceAnswer::yes : FaceAnswer::no;
}

}  // namespace

SeenForm::SeenForm(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      clients_(new ClientsSeen(session)),
      face_(new QComboBox),
      strangers_(new QCheckBox(tr("Somebody who is no client"))),
      nobody_(new QCheckBox(tr("No person at all"))),
      doubts_(make_text({})) {
    be_as_wide_as_there_is_room(*face_);
    face_->setAccessibleName(tr("Whether a face shows"));
    face_->addItems({tr("a face may show"), tr("a face shows"), tr("no face shows")});
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space(1));
    for (QWidget* part : {static_cast<QWidget*>(clients_), static_cast<QWidget*>(face_),
                          static_cast<QWidget*>(strangers_), static_cast<QWidget*>(nobody_),
                          static_cast<QWidget*>(doubts_)}) {
        column->addWidget(part);
    }
    column->addWidget(make_quiet(tr("The search for faces can miss one: look for yourself.")));
    connect(face_, &QComboBox::activated, this, &SeenForm::save);
    connect(strangers_, &QCheckBox::clicked, this, &SeenForm::save);
    connect(nobody_, &QCheckBox::clicked, this, &SeenForm::save);
}

void SeenForm::show_photo(const Photo& photo, const PhotoToShow& shown) {
    photo_ = photo.id;
    const Seen seen = session_.library().credits().seen(photo.id);
    clients_->show_photo(photo, shown);
    face_->setCurrentIndex(static_cast<int>(answer_in(seen)));
    strangers_->setChecked(seen.strangers);
    nobody_->setChecked(seen.nobody);
    QStringList words;
    for (const std::string& doubt : doubts(photo, seen)) words << from_utf8(doubt);
    doubts_->setText(words.join(QLatin1Char('\n')));
    doubts_->setVisible(!words.isEmpty());
}

void SeenForm::save() {
    Seen seen;
    const auto answer = static_cast<FaceAnswer>(face_->currentIndex());
    if (answer != FaceAnswer::unsaid) seen.face = answer == FaceAnswer::yes;
    seen.strangers = strangers_->isChecked();
    seen.nobody = nobody_->isChecked();
    session_.attempt([&] { session_.change_records(say_seen(photo_, seen)); });
}

}  // namespace quarterturn
