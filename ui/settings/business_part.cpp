#include "ui/settings/business_part.h"

#include <QFormLayout>
#include <QLineEdit>

#include "indexer/store/library_settings.h"
#include "ui/shell/session.h"
#include "ui/shell/setting_edit.h"
#include "ui/theme/theme.h"
#include "ui/widgets/notice.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/said_here.h"
#include "ui/widgets/words.h"

namespace quarterturn {

BusinessPart::BusinessPart(Session& session)
    : SettingsPart(tr("Your letterhead"), tr("At the foot of every page that is printed.")),
      session_(session),
      library_(session.library().folder()),
      foot_(make_text({})) {
    auto* form = new QFormLayout;
    form->setHorizontalSpacing(space(4));
    form->setVerticalSpacing(space(2));
    form->setLabelAlignment(Qt::AlignLeading);
    form->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    fields_ << make_field(*form, business_name_setting, tr("Your business"),
                          tr("changed the name of your business"))
            << make_field(*form, business_line_setting, tr("A line below it"),
                          tr("changed the line on your business"))
            << make_field(*form, business_contact_setting, tr("How clients reach you"),
                          tr("changed how clients reach you"));
    fields_[1].line->setPlaceholderText(tr("bridal hair by appointment"));
    fields_[2].line->setPlaceholderText(tr("stands on the consent form"));
    for (const Field& field : fields_) {
        connect(field.line, &QLineEdit::editingFinished, this, [this, field] { save(field); });
    }
    column()->addLayout(form);
    column()->addWidget(foot_);
}

BusinessPart::Field BusinessPart::make_field(QFormLayout& form, std::string_view setting,
                                             const QString& label, const QString& said) {
    Field field{setting, said, new QLineEdit, new Notice};
    field.line->setAccessibleName(label);
    form.addRow(label, field.line);
    form.addRow(QString(), field.notice);
    return field;
}

void BusinessPart::save(const Field& field) {
    const std::string value = to_utf8(field.line->text().trimmed());
    try {
        if (value != session_.library().settings().get(field.setting).value_or("")) {
            session_.change_records_or_throw(
                change_setting(to_utf8(field.said), field.setting, value));
        }
    } catch (const std::exception& problem) {
        field.notice->say(said_here(problem.what()));
        return;
    }
    field.line->setModified(false);
    field.notice->say({});
}

void BusinessPart::refresh() {
    for (const Field& field : fields_) {
        const auto value = session_.library().settings().get(field.setting).value_or("");
        if (field.line->isModified()) continue;
        if (field.line->text() != from_utf8(value)) field.line->setText(from_utf8(value));
    }
    const QString foot = from_utf8(business_words(session_.library().settings()));
    //: what is printed at the foot of every page
    foot_->setText(foot.isEmpty() ? tr("Nothing is printed there yet.")
                                  : tr("Printed as: %1").arg(isolated(foot)));
}

void BusinessPart::leave() {
    if (session_.library().folder() != library_) return;
    for (const Field& field : fields_) {
        if (field.line->isModified()) save(field);
    }
}

}  // namespace quarterturn
