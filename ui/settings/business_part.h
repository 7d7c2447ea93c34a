#pragma once

#include <string_view>

#include "indexer/disk/file_system.h"
#include "ui/settings/settings_part.h"

class QFormLayout;
class QLineEdit;

namespace quarterturn {

class Notice;
class Session;

// Her name and a line on it, as they are printed, and how clients reach her. A field is saved as
// she leaves it.
class BusinessPart : public SettingsPart {
    Q_OBJECT
  public:
    explicit BusinessPart(Session& session);

    void refresh() override;
    void leave() override;

  private:
    struct Field {
        std::string_view setting;
        QString said;  // "changed the name on paper"
        QLineEdit* line;
        Notice* notice;
    };
    Field make_field(QFormLayout& form, std::string_view setting, const QString& label,
                     const QString& said);
    void save(const Field& field);

    Session& session_;
    Path library_;  // that the fields belong to
    QList<Field> fields_;
    QLabel* foot_;
};

}  // namespace quarterturn
