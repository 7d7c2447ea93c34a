#pragma once

#include <QWidget>
#include <map>
#include <vector>

#include "ui/coming_up/record_edits.h"

class QComboBox;
class QLineEdit;
class QVBoxLayout;

namespace quarterturn {

// The party of a wedding: a row for each client with a role. A name that is not known yet becomes a
// new client when the wedding is saved; of several clients with one name she chooses by number.
class PartyField : public QWidget {
    Q_OBJECT
  public:
    explicit PartyField(const std::vector<Client>& known, QWidget* parent = nullptr);

    void add_member(const QString& role);  // whose name she will give
    void add_member(const PartyMember& member);
    std::vector<NamedMember> members() const;  // rows without a name are left out

  private:
    struct Row {
        QWidget* widget;
        QComboBox* name;
        QLineEdit* role;
    };
    void add_row(const QString& name, const QString& role);
    void remove_row(QWidget* widget);
    NamedMember member_in(const Row& row) const;

    std::map<QString, ClientId> known_;  // by the name shown, which tells two of one name apart
    QVBoxLayout* rows_layout_;
    std::vector<Row> rows_;
};

}  // namespace quarterturn
