#include "ui/coming_up/sitting_form.h"

#include <QCheckBox>
#include <QComboBox>

#include "ui/coming_up/record_edits.h"
#include "ui/shell/session.h"
#include "ui/widgets/date_field.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr std::array all_kinds{SittingKind::consultation, SittingKind::trial,
                               SittingKind::wedding_day, SittingKind::model_shoot};

QString title_of(const Sitting& sitting) {
    return sitting.id ? SittingForm::tr("Change the sitting") : SittingForm::tr("A new sitting");
}

qint64 chosen(const QComboBox& box) {
    return box.currentData().toLongLong();
}

void choose(QComboBox& box, qint64 value) {
    box.setCurrentIndex(box.findData(value));
}

}  // namespace

SittingForm::SittingForm(Session& session, const Sitting& sitting, QWidget* parent)
    : RecordForm(session, title_of(sitting), parent),
      before_(sitting),
      client_(new QComboBox),
      kind_(new QComboBox),
      wedding_(new QComboBox),
      date_(make_date_field(date_of(sitting.starts))),
      starts_(make_time_field(sitting.starts)),
      ends_(make_time_field(sitting.ends)),
      looks_(new QWidget),
      looks_column_(new QVBoxLayout(looks_)) {
    looks_column_->setContentsMargins(0, 0, 0, 0);
    fill_choices();
    add_field(tr("Client"), client_);
    add_field(tr("What for"), kind_);
    add_field(tr("Wedding"), wedding_);
    add_field(tr("Day"), date_);
    add_field(tr("From"), starts_);
    add_field(tr("To"), ends_);
    add_field(tr("Looks"), looks_);
    setFocusProxy(client_);
    connect(client_, &QComboBox::currentIndexChanged, this, &SittingForm::offer_looks);
    offer_looks();
}

void SittingForm::fill_choices() {
    for (const Client& client : session().library().clients().all()) {
        client_->addItem(from_utf8(client.name), qint64{client.id.value});
    }
    for (const SittingKind kind : all_kinds) kind_->addItem(shown(kind), qint64(kind));
    wedding_->addItem(tr("none"), qint64{0});
    for (const Wedding& wedding : session().library().weddings().all()) {
        wedding_->addItem(tr("%1, %2").arg(from_utf8(wedding.name), shown(wedding.date)),
                          qint64{wedding.id.value});
    }
    if (before_.client) choose(*client_, before_.client.value);
    choose(*kind_, qint64(before_.kind));
    choose(*wedding_, before_.wedding ? before_.wedding->value : 0);
}

void SittingForm::offer_looks() {
    empty_layout(looks_column_);
    offered_.clear();
    for (const Look& look : session().library().looks().of_client(ClientId{chosen(*client_)})) {
        auto* box = new QCheckBox(from_utf8(look.name));
        const bool worked_on = std::ranges::find(look.sittings, before_.id) != look.sittings.end();
        const bool same_wedding = !before_.id && look.wedding == before_.wedding;
        box->setChecked(worked_on || same_wedding);
        looks_column_->addWidget(box);
        offered_.emplace_back(look, box);
    }
    if (offered_.empty()) {
        looks_column_->addWidget(make_quiet(tr("No look of hers yet: add one on her card.")));
    }
}

std::vector<Look> SittingForm::chosen_looks() const {
    std::vector<Look> looks;
    for (const auto& [look, box] : offered_) {
        if (box->isChecked()) looks.push_back(look);
    }
    return looks;
}

Edit SittingForm::edit() {
    if (client_->currentIndex() < 0) {
        throw std::runtime_error(to_utf8(tr("A sitting needs a client: add her first.")));
    }
    Sitting after = before_;
    after.client = ClientId{chosen(*client_)};
    after.kind = static_cast<SittingKind>(chosen(*kind_));
    after.wedding.reset();
    if (const qint64 wedding = chosen(*wedding_)) after.wedding = WeddingId{wedding};
    after.starts = time_on(date_in(*date_), *starts_);
    after.ends = time_on(date_in(*date_), *ends_);
    return save_sitting(after, chosen_looks());
}

}  // namespace quarterturn
