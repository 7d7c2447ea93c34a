#pragma once

#include <QWidget>
#include <vector>

#include "ui/coming_up/record_edits.h"

class QComboBox;
class QLineEdit;
class QVBoxLayout;

namespace quarterturn {

// The party of a wedding: a row for each client with a role. A name that is not known yet becomes a
// new client when the wedding is saved.
class PartyField : public QWidget {
    Q_OBJECT
  public:
    PartyField(const QStringList& known_names, QWidget* parent = nullptr);

    void add_member(const QString& name, const QString& role);
    std::vector<NamedMember> members() const;  // rows without a name are left out

  private:
    struct Row {
        QWidget* widget;
        QComboBox* name;
        QLineEdit* role;
    };
    void remove_row(QWidget* widget);

    QStringList known_names_;
    QVBoxLayout* rows_layout_;
    std::vector<Row> rows_;
};

// A name that can be chosen from those known or typed anew.
QComboBox* make_name_field(const QStringList& known_names, const QString& name);

}  // namespace quarterturn
