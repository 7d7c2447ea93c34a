#include "ui/coming_up/wedding_form.h"

#include <QLineEdit>
#include <QTime>

#include "ui/coming_up/party_field.h"
#include "ui/coming_up/record_edits.h"
#include "ui/shell/session.h"
#include "ui/widgets/date_field.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

// "12:30", however she typed it; empty when she left it open.
std::string ready_by_text(const QString& typed) {
    if (typed.isEmpty()) return {};
    QTime time = QTime::fromString(typed, QStringLiteral("H:mm"));
    if (!time.isValid()) time = QTime::fromString(typed, QStringLiteral("H.mm"));
    if (!time.isValid()) time = QTime::fromString(typed, QStringLiteral("H"));
    if (!time.isValid()) {
        throw std::runtime_error(to_utf8(
            WeddingForm::tr("\"%1\" is no time of day: write it as 12:30, or leave it open.")
                .arg(typed)));
    }
    return to_utf8(time.toString(QStringLiteral("HH:mm")));
}

}  // namespace

WeddingForm::WeddingForm(Session& session, const std::optional<Wedding>& wedding, QWidget* parent)
    : RecordForm(session, wedding ? tr("Change the wedding") : tr("A new wedding"), parent),
      before_(wedding),
      name_(new QLineEdit),
      date_(make_date_field(wedding ? wedding->date : session.today())),
      venue_(new QLineEdit),
      ready_by_(new QLineEdit) {
    party_ = new PartyField(session.library().clients().all());
    name_->setPlaceholderText(tr("whose wedding it is"));
    ready_by_->setPlaceholderText(tr("12:30, or leave it open"));
    add_field(tr("Wedding of"), name_);
    add_field(tr("Day"), date_);
    add_field(tr("Venue"), venue_);
    add_field(tr("Ready by"), ready_by_);
    add_field(tr("Party"), party_);
    setFocusProxy(name_);
    if (!wedding) {
        party_->add_member(tr("bride"));
        return;
    }
    name_->setText(from_utf8(wedding->name));
    venue_->setText(from_utf8(wedding->venue));
    ready_by_->setText(from_utf8(wedding->ready_by));
    for (const PartyMember& member : wedding->party) party_->add_member(member);
}

Edit WeddingForm::edit() {
    Wedding after = before_.value_or(Wedding{});
    after.name = to_utf8(name_->text().trimmed());
    after.date = date_in(*date_);
    after.venue = to_utf8(venue_->text().trimmed());
    after.ready_by = ready_by_text(ready_by_->text().trimmed());
    return save_wedding(after, party_->members());
}

}  // namespace quarterturn
